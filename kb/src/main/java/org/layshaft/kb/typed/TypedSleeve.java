package org.layshaft.kb.typed;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.layout.Side;

/**
 * A sleeve as typed.
 *
 * @param base the base name: {@code 3-4}
 * @param rim the gear cut on its outside, if any
 * @param rings the sides that have a blocking ring, if they couple a gear
 */
public record TypedSleeve(
        String pointer,
        String base,
        Naming naming,
        Optional<TypedGear> rim,
        Map<Side, TypedSide> sides,
        Set<Side> rings)
        implements TypedItem, TypedMember {
    public TypedSleeve {
        sides = TypedMember.inOrder(sides);
        rings = Set.copyOf(rings);
    }

    @Override
    public String id() {
        return base + "-sleeve";
    }

    public String hub() {
        return base + "-hub";
    }

    @Override
    public boolean hasTeethToMesh() {
        return rim.isPresent();
    }

    @Override
    public String meshingGear() {
        return rim.map(TypedGear::id).orElse(id());
    }

    @Override
    public TypedSleeve within(UnitNames unit) {
        return new TypedSleeve(
                unit.pointer(),
                unit.id(base),
                unit.naming(naming),
                rim.map(gear -> gear.within(unit)),
                unit.sides(sides),
                rings);
    }
}
