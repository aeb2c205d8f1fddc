package org.layshaft.kb.layout;

/**
 * Two gears in mesh, by id. The order is that of the layout file and says nothing about which drives.
 *
 * @param kind which way they turn each other
 */
public record Mesh(String first, String second, MeshKind kind) {

    /** Two external gears. */
    public Mesh(String first, String second) {
        this(first, second, MeshKind.EXTERNAL);
    }

    public String id() {
        return first + "/" + second;
    }

    public boolean joins(String gear) {
        return first.equals(gear) || second.equals(gear);
    }

    public String other(String gear) {
        return first.equals(gear) ? second : first;
    }
}
