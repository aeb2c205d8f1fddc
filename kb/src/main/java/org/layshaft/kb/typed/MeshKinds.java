package org.layshaft.kb.typed;

import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.MeshKind;

/** Which way two gears turn each other, from what was typed at either. */
final class MeshKinds {
    private MeshKinds() {}

    static MeshKind between(Optional<TypedGear> first, Optional<TypedGear> second) {
        Optional<Crown> crown = Stream.of(first, second)
                .flatMap(gear -> gear.flatMap(TypedGear::crown).stream())
                .findFirst();
        if (crown.isPresent()) {
            return crown.get() == Crown.LEFT ? MeshKind.BEVEL : MeshKind.BEVEL_OPPOSITE;
        }
        boolean inside = Stream.of(first, second)
                .anyMatch(gear -> gear.filter(TypedGear::internal).isPresent());
        return inside ? MeshKind.INTERNAL : MeshKind.EXTERNAL;
    }
}
