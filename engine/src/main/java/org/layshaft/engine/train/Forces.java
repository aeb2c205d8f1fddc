package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearForm;
import org.layshaft.engine.exact.LinearSystem;

/**
 * Forces in the rows of a train that add up to given torques on its bodies, one for each row. Read as multipliers, they
 * prove that a sum of speeds is zero in every motion.
 *
 * <p>In a tree of the {@link Forest} whatever a body lacks comes by its trunk, and what that takes from the parent is
 * lacking there: all lacks end up at the roots, where there is nothing further to draw on. The forces of loose rows are
 * the unknowns that must make up for them.
 */
final class Forces {
    private static final int NONE = -1;

    private final Forest forest;
    private final List<Row> rows;

    /** Forces by row for 1 in each unknown in turn, and then for nothing but the torques given. */
    private final List<Fraction[]> parts = new ArrayList<>();

    private final LinearSystem unknowns;
    private final LinearForm[] lacksOfRoots;
    private final boolean unique;
    private final Fraction[] byRow;

    private Forces(Map<Integer, Fraction> wanted, int loaded, List<Row> rows, Forest forest) {
        this.forest = forest;
        this.rows = rows;
        this.unknowns = new LinearSystem(forest.loose().length + (loaded == NONE ? 0 : 1));
        this.lacksOfRoots = new LinearForm[forest.ground() + 1];
        for (int number : forest.loose()) {
            parts.add(forOneIn(number));
        }
        if (loaded != NONE) {
            parts.add(drawing(Map.of(loaded, Fraction.ONE)));
        }
        parts.add(drawing(wanted));
        for (LinearForm lack : lacksOfRoots) {
            if (lack != null) {
                unknowns.require(lack);
            }
        }
        this.unique = unknowns.free().isEmpty();
        if (!unique) {
            share();
        }
        this.byRow = sum();
    }

    /**
     * Empty where no forces do.
     *
     * @param wanted torques by number of the body; zero on all others
     */
    static Optional<Forces> addingUpTo(Map<Integer, Fraction> wanted, Forest forest) {
        return solved(new Forces(wanted, NONE, forest.rows(), forest));
    }

    /**
     * The same with rows that lose something, and with one more torque, on the body that is loaded, that is not given
     * but follows.
     */
    static Optional<Forces> withLoadOn(int loaded, Map<Integer, Fraction> wanted, List<Row> rows, Forest forest) {
        return solved(new Forces(wanted, loaded, rows, forest));
    }

    private static Optional<Forces> solved(Forces forces) {
        return forces.unknowns.isSolvable() ? Optional.of(forces) : Optional.empty();
    }

    /** The torque on the body that is loaded. */
    Fraction load() {
        return unknowns.valueOf(unknowns.one() - 1).coefficientOf(unknowns.one());
    }

    /** Whether no other forces do. */
    boolean areUnique() {
        return unique;
    }

    /** By number of the row, zeros included. */
    Fraction[] byRow() {
        return byRow;
    }

    private Fraction[] sum() {
        Fraction[] sum = parts.get(unknowns.one());
        for (int unknown = 0; unknown < unknowns.one(); unknown++) {
            Fraction force = unknowns.valueOf(unknown).coefficientOf(unknowns.one());
            for (int row = 0; row < sum.length && !force.isZero(); row++) {
                sum[row] = sum[row].plus(parts.get(unknown)[row].times(force));
            }
        }
        return sum;
    }

    /** By id of the connection, zeros included. */
    Map<String, Fraction> byConnection() {
        Map<String, Fraction> byConnection = new LinkedHashMap<>(2 * byRow.length);
        for (int row = 0; row < byRow.length; row++) {
            byConnection.put(rows.get(row).id(), byRow[row]);
        }
        return byConnection;
    }

    private Fraction[] forOneIn(int number) {
        Fraction[] forces = nothing();
        forces[number] = Fraction.ONE;
        Row row = rows.get(number);
        for (int place = 0; place < row.bodies().length; place++) {
            draw(row.bodies()[place], row.push(place).negated(), forces);
        }
        return forces;
    }

    private Fraction[] drawing(Map<Integer, Fraction> wanted) {
        Fraction[] forces = nothing();
        wanted.forEach((body, torque) -> draw(body, torque, forces));
        return forces;
    }

    /** Makes up for what a body lacks, trunk by trunk, and leaves the root lacking the rest. */
    private void draw(int body, Fraction torque, Fraction[] forces) {
        int at = body;
        Fraction lack = torque;
        while (!forest.isRoot(at)) {
            int trunk = forest.trunk(at);
            Fraction force = lack.over(rows.get(trunk).pushOn(at));
            forces[trunk] = forces[trunk].plus(force);
            at = forest.parent(at);
            lack = rows.get(trunk).pushOn(at).times(force).negated();
        }
        if (at != forest.ground()) {
            LinearForm before = lacksOfRoots[at] == null ? LinearForm.ZERO : lacksOfRoots[at];
            lacksOfRoots[at] = before.plus(LinearForm.of(parts.size(), lack));
        }
    }

    /**
     * Settles how branches share, which the equations leave open: first so that the wheels have as equal a part in the
     * torque of the road as they can, then so that all forces are as small as they can be, by the sum of their squares.
     */
    private void share() {
        List<Integer> all = new ArrayList<>();
        List<Integer> onTheRoad = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            all.add(row);
            if (rows.get(row).connection() instanceof Connection.Rolling) {
                onTheRoad.add(row);
            }
        }
        settleAtLeastSquares(onTheRoad);
        settleAtLeastSquares(all);
    }

    private void settleAtLeastSquares(List<Integer> rows) {
        Map<Integer, LinearForm> slopes = new LinkedHashMap<>();
        unknowns.free().forEach(unknown -> slopes.put(unknown, LinearForm.ZERO));
        for (int row : rows) {
            LinearForm force = form(row);
            slopes.replaceAll((unknown, slope) -> slope.plus(force, force.coefficientOf(unknown)));
        }
        slopes.values().forEach(unknowns::require);
    }

    private LinearForm form(int row) {
        LinearForm form = LinearForm.of(unknowns.one(), parts.get(unknowns.one())[row]);
        for (int unknown = 0; unknown < unknowns.one(); unknown++) {
            form = form.plus(unknowns.valueOf(unknown), parts.get(unknown)[row]);
        }
        return form;
    }

    private Fraction[] nothing() {
        Fraction[] forces = new Fraction[rows.size()];
        Arrays.fill(forces, Fraction.ZERO);
        return forces;
    }
}
