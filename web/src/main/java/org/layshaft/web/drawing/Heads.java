package org.layshaft.web.drawing;

/** Arrow heads. */
final class Heads {
    private Heads() {}

    /** A triangle with its tip a little beyond this point, in this direction. */
    static void solid(Pen pen, double x, double y, double alongX, double alongY, double size) {
        double length = Math.hypot(alongX, alongY);
        double ux = alongX / length;
        double uy = alongY / length;
        double half = size / 2;
        pen.move(x + ux * half, y + uy * half)
                .line(x - ux * half - uy * half, y - uy * half + ux * half)
                .line(x - ux * half + uy * half, y - uy * half - ux * half)
                .close();
    }
}
