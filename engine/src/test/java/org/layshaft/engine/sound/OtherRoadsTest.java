package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.FloatingSpeeds;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** Every gear of every layout of Saltmarsh: orders from the speeds that the rules derive, and from singular values. */
class OtherRoadsTest {
    private static final double TOLERANCE = 1e-6;

    static Stream<Layout> layouts() {
        return Boxes.every().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void teethTimesTheSpeedsOfTheRules(Layout layout) {
        for (DerivedGear gear : Heard.gears(layout)) {
            Sounds sounds = Sounds.inGear(layout, Heard.names(layout), gear);
            for (Source mesh : meshes(sounds)) {
                for (String wheel : mesh.parts()) {
                    Fraction turns = speed(layout, gear, wheel).minus(carrier(layout, gear, mesh.parts(), wheel));
                    assertEquals(
                            turns.absolute()
                                    .times(Fraction.of(layout.gear(wheel).teeth())),
                            mesh.order().perTurn(),
                            () -> layout.id() + " " + gear.name() + " " + mesh.what());
                }
            }
        }
    }

    /** A mesh that is not listed stands, or goes round as one. */
    @ParameterizedTest
    @MethodSource("layouts")
    void noMeshThatTurnsIsLeftOut(Layout layout) {
        for (DerivedGear gear : Heard.gears(layout)) {
            Set<List<String>> listed = meshes(Sounds.inGear(layout, Heard.names(layout), gear)).stream()
                    .map(Source::parts)
                    .collect(Collectors.toSet());
            layout.meshes().stream()
                    .map(mesh -> List.of(mesh.first(), mesh.second()))
                    .filter(pair -> gear.motion().speedOf(pair.get(0)).isPresent())
                    .filter(pair -> !speed(layout, gear, pair.get(0)).equals(carrier(layout, gear, pair, pair.get(0))))
                    .forEach(pair -> assertTrue(listed.contains(pair), () -> layout.id() + gear.name() + pair));
        }
    }

    /** Power goes through a mesh only where it goes through both its gears. */
    @ParameterizedTest
    @MethodSource("layouts")
    void whatIsLoadedCarriesPowerByTheRules(Layout layout) {
        for (DerivedGear gear : Heard.gears(layout)) {
            for (Source mesh : meshes(Sounds.inGear(layout, Heard.names(layout), gear))) {
                assertEquals(
                        gear.motion().carrying().containsAll(mesh.parts()),
                        mesh.loaded(),
                        () -> layout.id() + " " + gear.name() + " " + mesh.what());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void whatTurnsAndWhatRollsBySingularValues(Layout layout) {
        for (DerivedGear gear : Heard.gears(layout)) {
            Map<String, Double> speeds = FloatingSpeeds.of(new TrainBuilder(layout, Changes.NONE).at(gear.stance()));
            for (Source source :
                    Sounds.inGear(layout, Heard.names(layout), gear).sources()) {
                String part = source.parts().get(0);
                if (source.kind() == SourceKind.SHAFT && !isCarried(layout, part)) {
                    assertNear(speeds.get(part), source, layout);
                } else if (source.kind() == SourceKind.BEARING) {
                    Bearing bearing = layout.the(Bearing.class, part);
                    if (!isCarried(layout, bearing.inner())) {
                        assertNear(
                                speeds.getOrDefault(bearing.inner(), 0.0) - speeds.getOrDefault(bearing.outer(), 0.0),
                                source,
                                layout);
                    }
                }
            }
        }
    }

    private static void assertNear(double expected, Source source, Layout layout) {
        assertEquals(
                Math.abs(expected),
                source.order().perTurn().toDouble(),
                TOLERANCE,
                () -> layout.id() + " " + source.what());
    }

    private static List<Source> meshes(Sounds sounds) {
        return sounds.sources().stream()
                .filter(source -> source.kind() == SourceKind.MESH || source.kind() == SourceKind.CHAIN)
                .toList();
    }

    private static Fraction speed(Layout layout, DerivedGear gear, String body) {
        return gear.motion().speedOf(body).orElseThrow();
    }

    /** Turns of what carries one of a pair round; none of the layouts has a planet that lies across. */
    private static Fraction carrier(Layout layout, DerivedGear gear, List<String> pair, String wheel) {
        return pair.stream()
                .map(each -> layout.gear(each).carrier())
                .flatMap(shaft -> layout.find(Shaft.class, shaft).flatMap(Shaft::carriedBy).stream())
                .findFirst()
                .map(carrier -> speed(layout, gear, carrier))
                .orElse(Fraction.ZERO);
    }

    private static boolean isCarried(Layout layout, String shaft) {
        return layout.shaft(shaft).carriedBy().isPresent();
    }
}
