package org.layshaft.engine.road;

/** The highest speed that is kept up on the level, and what ends it. */
public record TopSpeed(String gear, double kmh, EndedBy endedBy) {

    public enum EndedBy {
        /** All the effort goes into resistance. */
        RESISTANCE,
        /** The engine's torque curve ends; what it would do above is not told. */
        END_OF_CURVE
    }
}
