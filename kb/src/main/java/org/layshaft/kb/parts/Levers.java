package org.layshaft.kb.parts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.typed.EffectiveSides;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedInnerClutch;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedLever;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;

/**
 * The levers with their places: those of a drum as typed, else each rail pushed to each side that engages something or
 * is called something, and each clutch closed. A place that pushes nothing is the neutral one, and no place beside it.
 */
final class Levers {
    private final TypedLayout layout;

    private Levers(TypedLayout layout) {
        this.layout = layout;
    }

    static List<Lever> of(TypedLayout layout) {
        return new Levers(layout).all();
    }

    private List<Lever> all() {
        List<Lever> levers = new ArrayList<>();
        TypedSelector gears = layout.selector();
        if (!gears.rails().isEmpty() || layout.levers().isEmpty()) {
            levers.add(new Lever(Lever.GEAR, "gear lever", gears.neutral(), gears.neutralCalled(), places(gears)));
        }
        layout.levers().stream().map(this::lever).forEach(levers::add);
        return levers;
    }

    private Lever lever(TypedLever typed) {
        List<Lever.Place> places = Stream.concat(
                        places(typed.selector()).stream(),
                        typed.clutches().stream().map(Levers::closed))
                .toList();
        String name = typed.naming().name().orElse(DefaultNames.words(typed.id()));
        return new Lever(
                typed.id(), name, typed.selector().neutral(), typed.selector().neutralCalled(), places);
    }

    private static Lever.Place closed(Reference clutch) {
        return new Lever.Place(Optional.empty(), Map.of(TypedInnerClutch.idOf(clutch.id()), Side.FRONT));
    }

    private List<Lever.Place> places(TypedSelector selector) {
        return selector.drum().isEmpty()
                ? selector.rails().stream().flatMap(this::places).toList()
                : selector.drum().stream()
                        .filter(place -> !place.pushes().isEmpty())
                        .map(place -> new Lever.Place(Optional.empty(), rails(place.pushes())))
                        .toList();
    }

    private static Map<String, Side> rails(Map<Reference, Side> pushes) {
        Map<String, Side> rails = new HashMap<>();
        pushes.forEach((rail, side) -> rails.put(TypedRail.idOf(rail.id()), side));
        return rails;
    }

    private Stream<Lever.Place> places(TypedRail rail) {
        Set<Side> engaging = EffectiveSides.of(rail, layout);
        return Stream.of(Side.values())
                .filter(side -> engaging.contains(side) || rail.called().containsKey(side))
                .map(side -> new Lever.Place(Optional.ofNullable(rail.called().get(side)), Map.of(rail.id(), side)));
    }
}
