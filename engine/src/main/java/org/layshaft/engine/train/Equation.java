package org.layshaft.engine.train;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A linear equation between the speeds of bodies: the sum of coefficient times speed is zero.
 *
 * @param coefficients whole numbers by body id; none is zero
 */
public record Equation(Map<String, Long> coefficients) {
    public Equation {
        coefficients = Collections.unmodifiableMap(new LinkedHashMap<>(coefficients));
    }

    /** Both bodies turn as one. */
    static Equation sameSpeed(String one, String other) {
        Map<String, Long> coefficients = new LinkedHashMap<>();
        coefficients.put(one, 1L);
        coefficients.put(other, -1L);
        return new Equation(coefficients);
    }
}
