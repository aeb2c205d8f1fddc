package org.layshaft.kb.layout;

import java.util.Optional;
import java.util.Set;

/**
 * A bearing, by the two things it lies between.
 *
 * @param inner id of the shaft inside it
 * @param outer id of the gear or shaft around it, or {@link #CASE}
 * @param thrust the ends that it keeps the shaft inside from moving toward, none of them for plain rollers; empty where
 *     the layout does not say
 * @param rolling what rolls in it; empty where the layout does not say
 */
public record Bearing(Named named, String inner, String outer, Optional<Set<Side>> thrust, Optional<Rolling> rolling)
        implements Part {
    /** Stands for the case of the box as the outer of a bearing. */
    public static final String CASE = "case";

    public Bearing {
        thrust = thrust.map(Set::copyOf);
    }

    /** One of which nobody has told more. */
    public Bearing(Named named, String inner, String outer) {
        this(named, inner, outer, Optional.empty(), Optional.empty());
    }

    @Override
    public PartKind kind() {
        return PartKind.BEARING;
    }
}
