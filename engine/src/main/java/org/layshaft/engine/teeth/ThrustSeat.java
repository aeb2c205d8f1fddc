package org.layshaft.engine.teeth;

import java.util.List;

/** Where the thrust of a shaft goes. */
public sealed interface ThrustSeat {

    /** The thrusts on the shaft cancel. */
    record NothingToTake() implements ThrustSeat {}

    record OneBearing(String name) implements ThrustSeat {}

    /** The shaft stands in the case, as the spindle of an idler does. */
    record TheCase() implements ThrustSeat {}

    /** Several could: which of them does, or how they share, is decided by their end float, which nobody has told. */
    record OneOf(List<String> bearings) implements ThrustSeat {}

    /** No bearing of the shaft takes thrust this way. */
    record NoBearing() implements ThrustSeat {}

    static ThrustSeat of(List<String> able) {
        return switch (able.size()) {
            case 0 -> new NoBearing();
            case 1 -> new OneBearing(able.get(0));
            default -> new OneOf(able);
        };
    }
}
