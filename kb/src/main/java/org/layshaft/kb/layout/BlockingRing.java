package org.layshaft.kb.layout;

/** The ring that brings a gear to its hub's speed before the sleeve passes. */
public record BlockingRing(Named named, String sleeve, String gear) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.BLOCKING_RING;
    }
}
