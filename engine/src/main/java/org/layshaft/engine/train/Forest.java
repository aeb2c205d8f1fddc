package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The bodies of a train gathered into trees by the rows that tie two of them, or one to the case. In a tree all turn at
 * fixed ratios, so that only what is left needs to be solved: rows that close a loop, and rows that tie three bodies.
 * Bodies and rows by number; the case has the number after the last body. Immutable.
 */
final class Forest {
    private static final int NONE = -1;

    private final List<Row> rows;
    private final int ground;
    private final int[] parents;
    private final int[] trunks;
    private final int[] inward;
    private final int[] loose;

    private Forest(List<Row> rows, int[] parents, int[] trunks, int[] inward, int[] loose) {
        this.rows = rows;
        this.ground = parents.length - 1;
        this.parents = parents;
        this.trunks = trunks;
        this.inward = inward;
        this.loose = loose;
    }

    /** The tree of the input has its root there, unless the case is in it. */
    static Forest of(Train train) {
        return new Growing(train).grown();
    }

    int ground() {
        return ground;
    }

    boolean isRoot(int body) {
        return parents[body] == NONE;
    }

    /** The next body toward the root. */
    int parent(int body) {
        return parents[body];
    }

    /** Number of the row that ties a body to its parent. */
    int trunk(int body) {
        return trunks[body];
    }

    /** All bodies but the roots, each before its parent. */
    int[] inward() {
        return inward;
    }

    /** Numbers of the rows that are no trunk: they close loops, or tie three bodies or more. */
    int[] loose() {
        return loose;
    }

    Row row(int number) {
        return rows.get(number);
    }

    List<Row> rows() {
        return rows;
    }

    /** Joins bodies that were apart, row by row, and then takes leaf after leaf off to find which way the root is. */
    private static final class Growing {
        private final List<Row> rows;
        private final int ground;
        private final int[] leads;
        private final int[] degrees;
        /** By body, the numbers of the trunks at it, all in one by exclusive or: where there is one left, it is that. */
        private final int[] atBody;

        private final List<Integer> loose = new ArrayList<>();
        private final int input;

        Growing(Train train) {
            rows = train.rows();
            ground = train.bodies().size();
            leads = new int[ground + 1];
            Arrays.setAll(leads, body -> body);
            degrees = new int[ground + 1];
            atBody = new int[ground + 1];
            input = train.number(train.input());
        }

        Forest grown() {
            for (int number = 0; number < rows.size(); number++) {
                join(number);
            }
            int root = lead(input) == lead(ground) ? ground : input;
            int[] parents = new int[ground + 1];
            int[] trunks = new int[ground + 1];
            int[] inward = new int[ground + 1];
            Arrays.fill(parents, NONE);
            int stripped = 0;
            for (int body = 0; body <= ground; body++) {
                int leaf = body;
                while (degrees[leaf] == 1 && leaf != root && leaf != ground) {
                    trunks[leaf] = atBody[leaf];
                    parents[leaf] = rows.get(trunks[leaf]).across(leaf, ground);
                    inward[stripped++] = leaf;
                    cut(leaf, trunks[leaf]);
                    cut(parents[leaf], trunks[leaf]);
                    leaf = parents[leaf];
                }
            }
            int[] left = loose.stream().mapToInt(Integer::intValue).toArray();
            return new Forest(rows, parents, trunks, Arrays.copyOf(inward, stripped), left);
        }

        private void join(int number) {
            Row row = rows.get(number);
            int one = row.bodies()[0];
            if (!row.isPair() || lead(one) == lead(row.across(one, ground))) {
                loose.add(number);
                return;
            }
            int other = row.across(one, ground);
            leads[lead(one)] = lead(other);
            plant(one, number);
            plant(other, number);
        }

        private void plant(int body, int trunk) {
            degrees[body]++;
            atBody[body] ^= trunk;
        }

        private void cut(int body, int trunk) {
            degrees[body]--;
            atBody[body] ^= trunk;
        }

        private int lead(int body) {
            int at = body;
            while (leads[at] != at) {
                leads[at] = leads[leads[at]];
                at = leads[at];
            }
            return at;
        }
    }
}
