package org.layshaft.web.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of numbers across or up a figure.
 *
 * @param from the number at {@code start}
 * @param to the number at {@code end}, more than {@code from}
 * @param logarithmic whether equal factors are equally far apart; both numbers are then more than 0
 */
record Axis(double from, double to, double start, double end, boolean logarithmic) {
    private static final double[] STEPS = {1, 2, 5};

    /** From nothing to a round number no less than this. */
    static Axis fromZero(double highest, double start, double end, int marks) {
        double step = step(highest / marks);
        return new Axis(0, Math.max(Math.ceil(highest / step - 1e-9), 1) * step, start, end, false);
    }

    /** From a little below the lowest to a little above the highest, both more than 0. */
    static Axis byFactors(double lowest, double highest, double start, double end) {
        double margin = 1.06;
        return new Axis(lowest / margin, highest * margin, start, end, true);
    }

    double at(double number) {
        double way = logarithmic ? Math.log(number / from) / Math.log(to / from) : (number - from) / (to - from);
        return start + (end - start) * way;
    }

    /** Round numbers on it, by rising size, no nearer to one another than so much. */
    List<Double> marks(double apart) {
        return logarithmic ? byFactors(apart) : evenly(apart);
    }

    private List<Double> evenly(double apart) {
        double step = step((to - from) * apart / Math.abs(end - start));
        List<Double> marks = new ArrayList<>();
        for (long count = Math.round(Math.ceil(from / step)); count * step <= to * (1 + 1e-9); count++) {
            marks.add(count * step);
        }
        return marks;
    }

    private List<Double> byFactors(double apart) {
        List<Double> marks = new ArrayList<>();
        for (double ten = Math.pow(10, Math.floor(Math.log10(from))); ten <= to; ten *= 10) {
            for (double tenth = 10; tenth < 100; tenth += tenth < 20 ? 1 : tenth < 50 ? 5 : 10) {
                double mark = ten * tenth / 10;
                boolean clear = marks.isEmpty() || Math.abs(at(mark) - at(marks.get(marks.size() - 1))) >= apart;
                if (mark >= from && mark <= to && clear) {
                    marks.add(mark);
                }
            }
        }
        return marks;
    }

    /** The round number no less than this: 1, 2 or 5 times a power of ten. */
    private static double step(double least) {
        double ten = Math.pow(10, Math.floor(Math.log10(least)));
        for (double step : STEPS) {
            if (step * ten >= least * (1 - 1e-9)) {
                return step * ten;
            }
        }
        return 10 * ten;
    }
}
