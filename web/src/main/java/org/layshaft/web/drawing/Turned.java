package org.layshaft.web.drawing;

/** Draws about a middle, as it is or with across and down changed for each other. */
record Turned(double x, double y, boolean across) {

    /** A closed outline through points given by pairs, from the middle. */
    Pen polygon(Pen pen, double... points) {
        path(pen, points);
        return pen.close();
    }

    Pen line(Pen pen, double... points) {
        return path(pen, points);
    }

    private Pen path(Pen pen, double... points) {
        for (int at = 0; at < points.length; at += 2) {
            double right = x + (across ? points[at + 1] : points[at]);
            double down = y + (across ? points[at] : points[at + 1]);
            if (at == 0) {
                pen.move(right, down);
            } else {
                pen.line(right, down);
            }
        }
        return pen;
    }
}
