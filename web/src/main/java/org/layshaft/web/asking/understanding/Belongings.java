package org.layshaft.web.asking.understanding;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.PathStep;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Detent;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Sleeve;

/** Which parts go together, so that "the ring on third" and "the detent of the 1-2 rail" are found. */
final class Belongings {
    private final Map<String, Set<String>> beside = new HashMap<>();
    private final Map<String, Set<String>> ofGear = new HashMap<>();
    private final Layout layout;

    Belongings(Box box) {
        layout = box.layout();
        layout.parts().values().forEach(part -> named(part).forEach(other -> tie(part.id(), other)));
        layout.everyMesh().forEach(mesh -> tie(mesh.first(), mesh.second()));
        layout.all(Fork.class).forEach(this::tieAllThatMovesWith);
        box.gears().forEach(gear -> ofGear.put(gear.name(), serving(gear, box)));
    }

    /** Whether this part belongs to something that is mentioned. */
    boolean belongs(String part, Mention to) {
        boolean besideOne = to.parts().stream()
                .anyMatch(other -> beside.getOrDefault(other, Set.of()).contains(part) || other.equals(part));
        return besideOne || to.gear().filter(gear -> serves(part, gear)).isPresent();
    }

    /** Whether this part serves this gear, and not every gear. */
    boolean serves(String part, String gear) {
        return ofGear.getOrDefault(gear, Set.of()).contains(part);
    }

    private void tie(String one, String other) {
        beside.computeIfAbsent(one, none -> new HashSet<>()).add(other);
        beside.computeIfAbsent(other, none -> new HashSet<>()).add(one);
    }

    private void tieAllThatMovesWith(Fork fork) {
        Set<String> together = movingWith(fork);
        together.forEach(
                one -> together.stream().filter(other -> !other.equals(one)).forEach(other -> tie(one, other)));
    }

    private Set<String> movingWith(Fork fork) {
        Set<String> together = new HashSet<>(List.of(fork.id(), fork.member(), fork.rail()));
        layout.all(Detent.class)
                .filter(detent -> detent.rail().equals(fork.rail()))
                .forEach(detent -> together.add(detent.id()));
        layout.all(Hub.class).filter(hub -> hub.sleeve().equals(fork.member())).forEach(hub -> together.add(hub.id()));
        return together;
    }

    private Set<String> serving(Box.DerivedGear gear, Box box) {
        Set<String> serving = new HashSet<>();
        gear.first().ifPresent(push -> {
            layout.forkOf(push.member()).ifPresent(fork -> serving.addAll(movingWith(fork)));
            layout.member(push.member()).at(push.side()).ifPresent(engagement -> serving.addAll(engaged(engagement)));
        });
        Set<String> elsewhere = new HashSet<>();
        box.gears().stream()
                .filter(other -> !other.name().equals(gear.name()))
                .forEach(other -> other.path().forEach(step -> elsewhere.add(step.part())));
        gear.path().stream()
                .map(PathStep::part)
                .filter(part -> !elsewhere.contains(part))
                .forEach(serving::add);
        Set<String> wheels = new HashSet<>(serving);
        layout.all(Bearing.class)
                .filter(bearing -> wheels.contains(bearing.outer()))
                .forEach(bearing -> serving.add(bearing.id()));
        return serving;
    }

    private static List<String> engaged(Engagement engagement) {
        if (engagement instanceof Engagement.Couples couples) {
            return Stream.concat(Stream.of(couples.to(), couples.clutchingTeeth()), couples.ring().stream())
                    .toList();
        }
        return ((Engagement.Meshes) engagement)
                .meshes().stream().flatMap(Belongings::ends).toList();
    }

    private static Stream<String> ends(Mesh mesh) {
        return Stream.of(mesh.first(), mesh.second());
    }

    /** The parts that a part's own facts name. */
    private static List<String> named(Part part) {
        if (part instanceof BlockingRing ring) {
            return List.of(ring.sleeve(), ring.gear());
        } else if (part instanceof ClutchingTeeth teeth) {
            return List.of(teeth.sleeve(), teeth.gear());
        } else if (part instanceof Hub hub) {
            return List.of(hub.shaft());
        } else if (part instanceof Sleeve sleeve) {
            return List.of(sleeve.shaft());
        } else if (part instanceof Bearing bearing) {
            return List.of(bearing.inner(), bearing.outer());
        } else if (part instanceof Gear gear) {
            return List.of(gear.carrier());
        } else if (part instanceof InterlockPiece piece) {
            return piece.rails();
        } else if (part instanceof HalfShaft shaft) {
            return List.of(shaft.differential());
        }
        return List.of();
    }
}
