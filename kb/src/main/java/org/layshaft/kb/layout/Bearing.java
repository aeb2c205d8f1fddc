package org.layshaft.kb.layout;

/**
 * A bearing, by the two things it lies between.
 *
 * @param inner id of the shaft inside it
 * @param outer id of the gear or shaft around it, or {@link #CASE}
 */
public record Bearing(Named named, String inner, String outer) implements Part {
    /** Stands for the case of the box as the outer of a bearing. */
    public static final String CASE = "case";

    @Override
    public PartKind kind() {
        return PartKind.BEARING;
    }
}
