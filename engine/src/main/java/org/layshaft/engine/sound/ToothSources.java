package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Connection.Meshing;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Shaft;

/** A tooth that meets several gears in one turn, as those of an idler, of a sun or of a planet do; and planets that pass. */
record ToothSources(Rates rates, Names names) {

    Stream<Source> all() {
        return Stream.concat(severalMeetings(), planetsPassing());
    }

    private Stream<Source> severalMeetings() {
        Map<String, List<Meshing>> byGear = new LinkedHashMap<>();
        for (Meshing meshing : rates.meshes()) {
            if (meshing.mesh().kind() != MeshKind.CHAIN) {
                for (String gear :
                        List.of(meshing.mesh().first(), meshing.mesh().second())) {
                    byGear.computeIfAbsent(gear, any -> new ArrayList<>()).add(meshing);
                }
            }
        }
        return byGear.entrySet().stream().flatMap(each -> of(each.getKey(), each.getValue()).stream());
    }

    /** Only where all meetings are in one frame: else they do not follow one another at even intervals. */
    private Optional<Source> of(String gear, List<Meshing> meshes) {
        Meshing any = meshes.get(0);
        Optional<String> frame = rates.frameOf(gear, any);
        int mates = meshes.stream().mapToInt(mesh -> matesOf(gear, mesh)).sum();
        boolean inOneFrame =
                meshes.stream().allMatch(mesh -> rates.frameOf(gear, mesh).equals(frame));
        return rates.inItsFrame(gear, any)
                .filter(turns -> mates > 1 && inOneFrame && !turns.isZero())
                .map(turns -> source(gear, meshes, mates, turns, frame));
    }

    private int matesOf(String gear, Meshing mesh) {
        return rates.spindleOf(gear).isPresent() ? 1 : rates.alike(mesh.mesh().other(gear));
    }

    private Source source(String gear, List<Meshing> meshes, int mates, Fraction turns, Optional<String> frame) {
        String against = frame.map(carrier -> " against " + names.the(carrier)).orElse("");
        return new Source(
                SourceKind.TOOTH,
                List.of(gear),
                "one tooth of %s meets other teeth, %d times in each turn%s".formatted(names.the(gear), mates, against),
                "%d meetings × %s of %s%s".formatted(mates, Counted.turns(turns), names.the(gear), against),
                Order.exactly(turns).times(mates),
                meshes.stream().anyMatch(rates::carries),
                List.of());
    }

    private Stream<Source> planetsPassing() {
        return rates.layout()
                .all(Shaft.class)
                .filter(spindle -> spindle.carriedBy().isPresent() && spindle.count() > 1)
                .flatMap(spindle -> passing(spindle, spindle.carriedBy().orElseThrow()).stream());
    }

    private Optional<Source> passing(Shaft spindle, String carrier) {
        return rates.of(carrier)
                .filter(turns -> !turns.isZero())
                .map(turns -> new Source(
                        SourceKind.PLANETS,
                        List.of(carrier, spindle.id()),
                        "the %d planets on %s pass one place in the case"
                                .formatted(spindle.count(), names.the(carrier)),
                        "%d planets × %s of %s".formatted(spindle.count(), Counted.turns(turns), names.the(carrier)),
                        Order.exactly(turns).times(spindle.count()),
                        rates.carrying().contains(carrier),
                        List.of()));
    }
}
