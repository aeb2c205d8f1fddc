package org.layshaft.engine.train;

/** How the two pieces of a cut shaft are named as bodies. */
public final class ShaftPiece {
    private static final String FRONT = "#front";
    private static final String REAR = "#rear";

    private ShaftPiece() {}

    static String front(String shaft, boolean cut) {
        return cut ? shaft + FRONT : shaft;
    }

    static String rear(String shaft, boolean cut) {
        return cut ? shaft + REAR : shaft;
    }

    /** Id of the shaft that a body is, or is a piece of. */
    public static String shaftOf(String body) {
        return body.replace(FRONT, "").replace(REAR, "");
    }

    /** What goes before the shaft's name: {@code "front piece of the "}, or nothing for a body that is whole. */
    public static String prefixOf(String body) {
        if (body.endsWith(FRONT)) {
            return "front piece of the ";
        }
        return body.endsWith(REAR) ? "rear piece of the " : "";
    }
}
