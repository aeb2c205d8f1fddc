package org.layshaft.kb.typed;

import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.layout.Rolling;
import org.layshaft.kb.layout.Side;

/**
 * A bearing as typed.
 *
 * @param in the shaft around it; empty for the case
 * @param thrust the ends that it keeps its shaft from moving toward, where typed
 * @param rolling what rolls in it, where typed
 */
public record TypedBearing(
        String pointer,
        String id,
        Naming naming,
        Optional<Reference> in,
        Optional<Set<Side>> thrust,
        Optional<Rolling> rolling)
        implements TypedItem {
    public TypedBearing {
        thrust = thrust.map(Set::copyOf);
    }

    @Override
    public TypedBearing within(UnitNames unit) {
        return new TypedBearing(unit.pointer(), unit.id(id), unit.naming(naming), unit.reference(in), thrust, rolling);
    }
}
