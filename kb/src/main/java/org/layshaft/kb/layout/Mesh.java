package org.layshaft.kb.layout;

/** Two external gears in mesh, by id. The order is that of the layout file and says nothing about which drives. */
public record Mesh(String first, String second) {
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
