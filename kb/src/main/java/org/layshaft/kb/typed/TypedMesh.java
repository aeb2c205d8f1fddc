package org.layshaft.kb.typed;

/**
 * A mesh as typed, always made or slid into.
 *
 * @param first the gear at which it was typed, or that slides
 * @param pointer JSON pointer of the mention of the second
 */
public record TypedMesh(String first, String second, String pointer) {
    public boolean joins(String gear) {
        return first.equals(gear) || second.equals(gear);
    }

    public boolean isBetween(String one, String other) {
        return first.equals(one) && second.equals(other) || first.equals(other) && second.equals(one);
    }

    /** As written in sentences: {@code third and cluster-third}. */
    public String written() {
        return "'%s' and '%s'".formatted(first, second);
    }
}
