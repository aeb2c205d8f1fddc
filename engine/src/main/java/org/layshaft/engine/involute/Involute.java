package org.layshaft.engine.involute;

/** The involute function and its inverse, in radians. */
public final class Involute {
    /** Up to here the series is near enough for Newton's steps to end in the last digits at once. */
    private static final double SERIES_HOLDS = 4;

    private Involute() {}

    /** {@code inv a = tan a - a}. */
    public static double of(double angle) {
        return Math.tan(angle) - angle;
    }

    /** The angle with this involute, from 0 up to a right angle; not a number where the involute is below 0. */
    public static double angleOf(double involute) {
        if (!(involute > 0)) {
            return involute == 0 ? 0 : Double.NaN;
        }
        double angle = involute < SERIES_HOLDS ? series(involute) : Math.atan(involute + Math.PI / 2);
        for (int step = 0; step < 20; step++) {
            double tangent = Math.tan(angle);
            double next = angle - (tangent - angle - involute) / (tangent * tangent);
            if (Math.abs(next - angle) <= 1e-15 * angle) {
                return next;
            }
            angle = next;
        }
        return angle;
    }

    /** H. Cheng's series of 1992, in the cube root of three times the involute. */
    private static double series(double involute) {
        double root = Math.cbrt(3 * involute);
        double square = root * root;
        return root * (1 + square * (-2.0 / 15 + square * (3.0 / 175 - square * 2.0 / 1575)));
    }
}
