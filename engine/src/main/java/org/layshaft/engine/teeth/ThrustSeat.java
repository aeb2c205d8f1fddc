package org.layshaft.engine.teeth;

import java.util.List;

/** Where the thrust of a shaft goes. */
public sealed interface ThrustSeat {

    /** The thrusts on the shaft cancel. */
    record NothingToTake() implements ThrustSeat {}

    record Bearing(String name) implements ThrustSeat {}

    /** Several could: which of them does, or how they share, is decided by their end float, which nobody has told. */
    record OneOf(List<String> bearings) implements ThrustSeat {}

    /** No bearing of the shaft takes thrust this way. */
    record NoBearing() implements ThrustSeat {}

    static ThrustSeat of(List<String> able) {
        return switch (able.size()) {
            case 0 -> new NoBearing();
            case 1 -> new Bearing(able.get(0));
            default -> new OneOf(able);
        };
    }
}
