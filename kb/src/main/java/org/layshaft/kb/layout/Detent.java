package org.layshaft.kb.layout;

/** The spring-loaded ball that holds a rail in its places. */
public record Detent(Named named, String rail) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.DETENT;
    }
}
