package org.layshaft.engine.api;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;

/**
 * How everything turns in one stance, straight ahead, the input turning once.
 *
 * @param outcome what input and output do
 * @param speeds turns of each body for one turn of the input, by part id, or by {@link ShaftPiece} where a shaft is cut;
 *     a body whose speed the input does not fix is absent. Where {@link Outcome#LOCKED}, everything tied to the input stands: its speed is zero
 * @param carrying ids of the parts that carry power from input to output
 * @param ratio input turns for one turn of the output, negative for the other sense; empty unless it drives
 */
public record Motion(Outcome outcome, Map<String, Fraction> speeds, Set<String> carrying, Optional<Fraction> ratio) {
    /** What input and output do in a stance. */
    public enum Outcome {
        /** The output follows the input at a fixed ratio. */
        DRIVES,
        /** Each can turn without the other. */
        NEUTRAL,
        /** Both can only stand still. */
        LOCKED,
        /** The input can only stand still; the output is free. */
        INPUT_HELD,
        /** The output can only stand still; the input is free. */
        OUTPUT_HELD
    }

    public Motion {
        speeds = Collections.unmodifiableMap(new LinkedHashMap<>(speeds));
        carrying = Collections.unmodifiableSet(new LinkedHashSet<>(carrying));
    }

    /** Turns of this body for one turn of the input; empty where the input does not fix it. */
    public Optional<Fraction> speedOf(String body) {
        return Optional.ofNullable(speeds.get(body));
    }
}
