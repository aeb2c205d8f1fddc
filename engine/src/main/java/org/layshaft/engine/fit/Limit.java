package org.layshaft.engine.fit;

/**
 * What a check holds its figures to.
 *
 * @param words as a clause: {@code must be the same}, {@code at least 1.2}
 * @param source where the limit comes from: a standard, a fact of the catalogue, {@code common practice, no source}
 */
public record Limit(String words, String source) {
    /** For rules of thumb. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    /** Follows from what the words mean, as that meshing teeth have one pitch. */
    public static final String GEOMETRY = "follows from the geometry";

    static final Limit SAME = new Limit("must be the same", GEOMETRY);
}
