package org.layshaft.kb.layout;

import java.util.List;

/** Anything in a layout that has a name and can fail. */
public sealed interface Part
        permits Shaft,
                Gear,
                Sleeve,
                Hub,
                BlockingRing,
                ClutchingTeeth,
                DogRing,
                Fork,
                Rail,
                Detent,
                Interlock,
                InterlockPiece,
                Bearing,
                Clutch,
                Differential,
                HalfShaft,
                Joint,
                Fitting {

    Named named();

    PartKind kind();

    default String id() {
        return named().id();
    }

    default String name() {
        return named().name();
    }

    default List<String> also() {
        return named().also();
    }
}
