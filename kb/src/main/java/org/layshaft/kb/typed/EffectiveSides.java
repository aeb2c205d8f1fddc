package org.layshaft.kb.typed;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Side;

/**
 * What each side of a sleeve or sliding gear engages, once defaults are filled in.
 *
 * <p>A side of which nothing was typed couples the free gear that is the sleeve's direct neighbour there, bearings
 * skipped. A sliding gear engages only what was typed.
 */
public final class EffectiveSides {
    private EffectiveSides() {}

    /** Couplings and meshes only; a side that engages nothing is absent. */
    public static Map<Side, TypedSide> of(TypedMember member, TypedLayout layout) {
        Map<Side, TypedSide> sides = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            TypedSide typed = member.sides().get(side);
            Optional<TypedSide> effective = typed != null ? Optional.of(typed) : byDefault(member, side, layout);
            effective.filter(one -> !(one instanceof TypedSide.Nothing)).ifPresent(one -> sides.put(side, one));
        }
        return sides;
    }

    /** The sides to which a rail engages something. */
    public static Set<Side> of(TypedRail rail, TypedLayout layout) {
        Set<String> bases = rail.moves().stream().map(Reference::id).collect(Collectors.toSet());
        Set<Side> sides = EnumSet.noneOf(Side.class);
        layout.members().stream()
                .filter(member -> bases.contains(member.base()))
                .forEach(member -> sides.addAll(of(member, layout).keySet()));
        return sides;
    }

    private static Optional<TypedSide> byDefault(TypedMember member, Side side, TypedLayout layout) {
        if (!(member instanceof TypedSleeve sleeve)) {
            return Optional.empty();
        }
        return layout.shaftOf(sleeve.id())
                .flatMap(shaft -> neighbour(sleeve, side, shaft))
                .filter(item -> item instanceof TypedGear gear && gear.seat() == Seat.FREE)
                .map(gear -> new TypedSide.Couples(new Reference(gear.id(), sleeve.pointer())));
    }

    /** The gear or sleeve next to this one on the same shaft, bearings skipped. */
    public static Optional<TypedItem> neighbour(TypedItem item, Side side, TypedShaft shaft) {
        List<TypedItem> items = shaft.workingItems();
        int place = items.indexOf(item) + (side == Side.FRONT ? -1 : 1);
        return place >= 0 && place < items.size() ? Optional.of(items.get(place)) : Optional.empty();
    }
}
