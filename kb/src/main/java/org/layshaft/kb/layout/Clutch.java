package org.layshaft.kb.layout;

/**
 * The friction clutch between the engine and the box.
 *
 * @param drives id of the shaft that it drives
 */
public record Clutch(Named named, String drives) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.CLUTCH;
    }
}
