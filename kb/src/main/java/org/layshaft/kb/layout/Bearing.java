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
 */
public record Bearing(Named named, String inner, String outer, Optional<Set<Side>> thrust) implements Part {
    /** Stands for the case of the box as the outer of a bearing. */
    public static final String CASE = "case";

    public Bearing {
        thrust = thrust.map(Set::copyOf);
    }

    /** One of which nobody has told what thrust it takes. */
    public Bearing(Named named, String inner, String outer) {
        this(named, inner, outer, Optional.empty());
    }

    @Override
    public PartKind kind() {
        return PartKind.BEARING;
    }
}
