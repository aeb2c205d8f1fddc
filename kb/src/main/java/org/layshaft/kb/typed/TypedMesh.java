package org.layshaft.kb.typed;

import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;

/**
 * A mesh as typed, always made or slid into.
 *
 * @param first the gear at which it was typed, or that slides
 * @param kind which way they turn each other
 * @param pointer JSON pointer of the mention of the second
 */
public record TypedMesh(String first, String second, MeshKind kind, String pointer) {
    public boolean joins(String gear) {
        return first.equals(gear) || second.equals(gear);
    }

    public boolean isBetween(String one, String other) {
        return first.equals(one) && second.equals(other) || first.equals(other) && second.equals(one);
    }

    public Mesh mesh() {
        return new Mesh(first, second, kind);
    }

    /** As written in sentences: {@code third and cluster-third}. */
    public String written() {
        return "'%s' and '%s'".formatted(first, second);
    }
}
