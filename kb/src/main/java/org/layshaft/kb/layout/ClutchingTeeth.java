package org.layshaft.kb.layout;

/** The small teeth on the side of a gear that a sleeve slides over. */
public record ClutchingTeeth(Named named, String sleeve, String gear) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.CLUTCHING_TEETH;
    }
}
