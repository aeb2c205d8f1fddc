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
    private final Forest forest;

    /** Forces by row for nothing but the torques given, and then for 1 in each loose row in turn. */
    private final List<Fraction[]> parts = new ArrayList<>();

    private final LinearSystem looseForces;
    private final LinearForm[] lacksOfRoots;
    private final boolean unique;
    private Fraction[] byRow;

    private Forces(Forest forest, Map<Integer, Fraction> wanted) {
        this.forest = forest;
        this.looseForces = new LinearSystem(forest.loose().length);
        this.lacksOfRoots = new LinearForm[forest.ground() + 1];
        for (int unknown = 0; unknown < forest.loose().length; unknown++) {
            parts.add(forOneIn(forest.loose()[unknown], unknown));
        }
        Fraction[] forGiven = nothing();
        wanted.forEach((body, torque) -> draw(body, torque, looseForces.one(), forGiven));
        parts.add(forGiven);
        for (LinearForm lack : lacksOfRoots) {
            if (lack != null) {
                looseForces.require(lack);
            }
        }
        this.unique = looseForces.free().isEmpty();
    }

    /**
     * Empty where no forces do.
     *
     * @param wanted torques by number of the body; zero on all others
     */
    static Optional<Forces> addingUpTo(Map<Integer, Fraction> wanted, Forest forest) {
        Forces forces = new Forces(forest, wanted);
        if (!forces.looseForces.isSolvable()) {
            return Optional.empty();
        }
        if (!forces.unique) {
            forces.share();
        }
        forces.byRow = forces.sum();
        return Optional.of(forces);
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
        Fraction[] sum = parts.get(looseForces.one());
        for (int unknown = 0; unknown < looseForces.one(); unknown++) {
            Fraction force = looseForces.valueOf(unknown).coefficientOf(looseForces.one());
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
            byConnection.put(forest.row(row).id(), byRow[row]);
        }
        return byConnection;
    }

    private Fraction[] forOneIn(int number, int unknown) {
        Fraction[] forces = nothing();
        forces[number] = Fraction.ONE;
        Row row = forest.row(number);
        for (int place = 0; place < row.bodies().length; place++) {
            draw(row.bodies()[place], row.coefficient(place).negated(), unknown, forces);
        }
        return forces;
    }

    /** Makes up for what a body lacks, trunk by trunk, and leaves the root lacking the rest. */
    private void draw(int body, Fraction torque, int unknown, Fraction[] forces) {
        int at = body;
        Fraction lack = torque;
        while (!forest.isRoot(at)) {
            int trunk = forest.trunk(at);
            Fraction force = lack.over(forest.row(trunk).coefficientOf(at));
            forces[trunk] = forces[trunk].plus(force);
            at = forest.parent(at);
            lack = forest.row(trunk).coefficientOf(at).times(force).negated();
        }
        if (at != forest.ground()) {
            LinearForm before = lacksOfRoots[at] == null ? LinearForm.ZERO : lacksOfRoots[at];
            lacksOfRoots[at] = before.plus(LinearForm.of(unknown, lack));
        }
    }

    /**
     * Settles how branches share, which the equations leave open: first so that the wheels have as equal a part in the
     * torque of the road as they can, then so that all forces are as small as they can be, by the sum of their squares.
     */
    private void share() {
        List<Integer> all = new ArrayList<>();
        List<Integer> onTheRoad = new ArrayList<>();
        for (int row = 0; row < forest.rows().size(); row++) {
            all.add(row);
            if (forest.row(row).connection() instanceof Connection.Rolling) {
                onTheRoad.add(row);
            }
        }
        settleAtLeastSquares(onTheRoad);
        settleAtLeastSquares(all);
    }

    private void settleAtLeastSquares(List<Integer> rows) {
        Map<Integer, LinearForm> slopes = new LinkedHashMap<>();
        looseForces.free().forEach(unknown -> slopes.put(unknown, LinearForm.ZERO));
        for (int row : rows) {
            LinearForm force = form(row);
            slopes.replaceAll((unknown, slope) -> slope.plus(force, force.coefficientOf(unknown)));
        }
        slopes.values().forEach(looseForces::require);
    }

    private LinearForm form(int row) {
        LinearForm form = LinearForm.of(looseForces.one(), parts.get(looseForces.one())[row]);
        for (int unknown = 0; unknown < looseForces.one(); unknown++) {
            form = form.plus(looseForces.valueOf(unknown), parts.get(unknown)[row]);
        }
        return form;
    }

    private Fraction[] nothing() {
        Fraction[] forces = new Fraction[forest.rows().size()];
        Arrays.fill(forces, Fraction.ZERO);
        return forces;
    }
}
