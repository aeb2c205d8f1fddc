package org.layshaft.kb.layout;

/** The splined centre of a sleeve, fixed on its shaft. */
public record Hub(Named named, String sleeve, String shaft) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.HUB;
    }
}
