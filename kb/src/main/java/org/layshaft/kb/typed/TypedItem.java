package org.layshaft.kb.typed;

/** Something typed along a shaft. */
public sealed interface TypedItem permits TypedGear, TypedSleeve, TypedBearing, TypedDogs, TypedInnerClutch {
    String pointer();

    /** The id of the part, for a sleeve with its suffix. */
    String id();

    Naming naming();

    /** The same as a part of a unit. */
    TypedItem within(UnitNames unit);
}
