package org.layshaft.engine.api;

/** How the bodies of a {@link Motion} are named where a shaft is cut: each of its two pieces is a body of its own. */
public final class ShaftPiece {
    private static final String FRONT = "#front";
    private static final String REAR = "#rear";

    private ShaftPiece() {}

    /** The body at the front end of a shaft: its front piece, or the whole where it is not cut. */
    public static String front(String shaft, boolean cut) {
        return cut ? shaft + FRONT : shaft;
    }

    /** The body at the rear end of a shaft: its rear piece, or the whole where it is not cut. */
    public static String rear(String shaft, boolean cut) {
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
