package org.layshaft.web.drawing;

/** Draws the data of a path. */
final class Pen {
    private final StringBuilder data = new StringBuilder();

    static Pen at(double x, double y) {
        return new Pen().move(x, y);
    }

    static Pen around(Box box) {
        return new Pen().box(box);
    }

    Pen move(double x, double y) {
        return add("M", x, y);
    }

    Pen line(double x, double y) {
        return add("L", x, y);
    }

    Pen across(double x) {
        return add("H", x);
    }

    Pen upDown(double y) {
        return add("V", y);
    }

    Pen curve(double viaX, double viaY, double x, double y) {
        return add("Q", viaX, viaY, x, y);
    }

    Pen close() {
        data.append('Z');
        return this;
    }

    Pen box(Box box) {
        return move(box.left(), box.top())
                .across(box.right())
                .upDown(box.bottom())
                .across(box.left())
                .close();
    }

    private Pen add(String command, double... numbers) {
        data.append(command);
        for (int at = 0; at < numbers.length; at++) {
            data.append(at == 0 ? "" : " ").append(Svg.number(numbers[at]));
        }
        return this;
    }

    @Override
    public String toString() {
        return data.toString();
    }
}
