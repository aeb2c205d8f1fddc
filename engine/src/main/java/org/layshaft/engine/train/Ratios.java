package org.layshaft.engine.train;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearForm;

/** How often each body turns for one turn of the root of its tree. Immutable; arrays are not handed on. */
final class Ratios {
    private final Forest forest;
    private final Fraction[] perTurnOfRoot;
    private final int[] roots;
    private final int count;

    Ratios(Train train) {
        forest = Forest.of(train);
        perTurnOfRoot = new Fraction[forest.ground() + 1];
        roots = new int[forest.ground() + 1];
        int found = 0;
        for (int body = 0; body < roots.length; body++) {
            if (forest.isRoot(body)) {
                perTurnOfRoot[body] = Fraction.ONE;
                roots[body] = found++;
            }
        }
        count = found;
        int[] inward = forest.inward();
        for (int place = inward.length - 1; place >= 0; place--) {
            int body = inward[place];
            int parent = forest.parent(body);
            perTurnOfRoot[body] =
                    perTurnOfRoot[parent].times(forest.row(forest.trunk(body)).ratioOf(body));
            roots[body] = roots[parent];
        }
    }

    Forest forest() {
        return forest;
    }

    /** How many roots there are, the case among them. */
    int roots() {
        return count;
    }

    /** Which root a body follows, from 0. */
    int rootOf(int body) {
        return roots[body];
    }

    Fraction of(int body) {
        return perTurnOfRoot[body];
    }

    /** The equation of a row between the speeds of roots, the first of which is the unknown of this number. */
    LinearForm form(Row row, int first) {
        LinearForm form = LinearForm.ZERO;
        for (int place = 0; place < row.bodies().length; place++) {
            int body = row.bodies()[place];
            form = form.plus(LinearForm.of(first + roots[body], perTurnOfRoot[body].times(row.coefficient(place))));
        }
        return form;
    }
}
