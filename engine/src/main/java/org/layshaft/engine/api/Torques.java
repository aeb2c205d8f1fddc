package org.layshaft.engine.api;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;

/**
 * What torques a stance puts on everything that turns, straight ahead and without losses, for a torque of 1 on the input.
 *
 * @param passing by part id, or by {@link ShaftPiece} where a shaft is cut: the torque that goes in at some places of the
 *     body and comes out at others, never below zero; zero for what carries nothing
 * @param shareIsAssumed whether power goes two ways at once, so that equal shares of like ways are assumed
 */
public record Torques(Map<String, Fraction> passing, boolean shareIsAssumed) {
    public Torques {
        passing = Collections.unmodifiableMap(new LinkedHashMap<>(passing));
    }

    /** Through this body; empty where it is none of the bodies. */
    public Optional<Fraction> through(String body) {
        return Optional.ofNullable(passing.get(body));
    }
}
