package org.layshaft.kb.typed;

/**
 * The clutch as typed, or as it stands by default.
 *
 * @param drives the shaft it drives
 */
public record TypedClutch(String pointer, Naming naming, Reference drives) {
    public static final String ID = "clutch";

    /** There is one clutch to the engine, so that its name stays as it is. */
    TypedClutch within(UnitNames unit) {
        return new TypedClutch(unit.pointer(), naming, unit.reference(drives));
    }
}
