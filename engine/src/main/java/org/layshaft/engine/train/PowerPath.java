package org.layshaft.engine.train;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;

/** The bodies that a force acts on, in the order in which power reaches them. */
final class PowerPath {
    private static final int NONE = -1;

    private final List<Row> rows;

    /** By body, the first loaded row at it; by place of a row, the next loaded row at the same body. */
    private final int[] first;

    private final int[][] following;

    private PowerPath(Train train, Fraction[] forces) {
        rows = train.rows();
        first = new int[train.bodies().size()];
        Arrays.fill(first, NONE);
        following = new int[rows.size()][];
        for (int row = rows.size() - 1; row >= 0; row--) {
            if (!forces[row].isZero()) {
                list(row);
            }
        }
    }

    /**
     * Bodies by id, nearest to the input first; one that is as near as another follows the order of the connections.
     *
     * @param forces by number of the row
     */
    static Set<String> of(Train train, Fraction[] forces) {
        PowerPath path = new PowerPath(train, forces);
        boolean[] reached = new boolean[train.bodies().size()];
        int[] queue = new int[reached.length];
        queue[0] = train.number(train.input());
        reached[queue[0]] = true;
        Set<String> inOrder = new LinkedHashSet<>();
        int queued = 1;
        for (int next = 0; next < queued; next++) {
            int body = queue[next];
            inOrder.add(train.bodies().get(body));
            for (int row = path.first[body]; row != NONE; row = path.following(row, body)) {
                for (int other : path.rows.get(row).bodies()) {
                    if (!reached[other]) {
                        reached[other] = true;
                        queue[queued++] = other;
                    }
                }
            }
        }
        return inOrder;
    }

    private void list(int row) {
        int[] bodies = rows.get(row).bodies();
        following[row] = new int[bodies.length];
        for (int place = 0; place < bodies.length; place++) {
            following[row][place] = first[bodies[place]];
            first[bodies[place]] = row;
        }
    }

    private int following(int row, int body) {
        int[] bodies = rows.get(row).bodies();
        int place = 0;
        while (bodies[place] != body) {
            place++;
        }
        return following[row][place];
    }
}
