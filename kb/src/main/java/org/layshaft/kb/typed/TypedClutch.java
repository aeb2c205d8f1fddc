package org.layshaft.kb.typed;

/**
 * The clutch as typed, or as it stands by default.
 *
 * @param drives the shaft it drives
 */
public record TypedClutch(String pointer, Naming naming, Reference drives) {
    public static final String ID = "clutch";
}
