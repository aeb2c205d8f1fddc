package org.layshaft.web.drawing;

import java.util.Collection;

/** An upright rectangle; {@code top} is less than {@code bottom}. */
record Box(double left, double top, double right, double bottom) {

    static Box about(double x, double y, double halfWidth, double halfHeight) {
        return new Box(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight);
    }

    /** The smallest that holds them all; there must be one at least. */
    static Box of(Collection<Box> boxes) {
        return boxes.stream().reduce(Box::with).orElseThrow();
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    double x() {
        return (left + right) / 2;
    }

    double y() {
        return (top + bottom) / 2;
    }

    Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    Box moved(double right, double down) {
        return new Box(left + right, top + down, this.right + right, bottom + down);
    }

    /** The point of this nearest to that one. */
    Point nearest(double x, double y) {
        return new Point(Math.max(left, Math.min(right, x)), Math.max(top, Math.min(bottom, y)));
    }

    /** Whether they come nearer than this to each other. */
    boolean near(Box other, double gap) {
        return left < other.right + gap
                && other.left < right + gap
                && top < other.bottom + gap
                && other.top < bottom + gap;
    }

    /** The area that both cover. */
    double shared(Box other) {
        double across = Math.min(right, other.right) - Math.max(left, other.left);
        double down = Math.min(bottom, other.bottom) - Math.max(top, other.top);
        return across > 0 && down > 0 ? across * down : 0;
    }
}
