package org.layshaft.web.drawing;

/** A point of the drawing. */
record Point(double x, double y) {
    boolean near(Point other) {
        return Math.hypot(x - other.x, y - other.y) < 0.5;
    }
}
