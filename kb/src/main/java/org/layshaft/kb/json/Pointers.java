package org.layshaft.kb.json;

/** JSON pointers (RFC 6901) as plain text. */
public final class Pointers {
    private Pointers() {}

    public static String child(String pointer, String key) {
        return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    public static String child(String pointer, int index) {
        return pointer + "/" + index;
    }

    /** The pointer to what holds this value; the whole file holds itself. */
    public static String parent(String pointer) {
        int slash = pointer.lastIndexOf('/');
        return slash < 0 ? "" : pointer.substring(0, slash);
    }

    /** Whether a value is this one or lies somewhere inside it. */
    public static boolean isWithin(String outer, String pointer) {
        return pointer.equals(outer) || pointer.startsWith(outer + "/");
    }
}
