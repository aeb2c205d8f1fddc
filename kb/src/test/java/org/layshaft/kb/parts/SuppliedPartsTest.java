package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gate;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.testing.Marked;

/** A layout with one of everything: what was typed, what was supplied, and in which order. */
class SuppliedPartsTest {
    private static final Layout DUNLIN = PackReader.check(List.of(Marked.resource("sound-pack")))
            .knowledge()
            .layout("dunlin")
            .orElseThrow();

    @Test
    void parts_stand_in_the_order_of_the_file_and_derived_ones_after() {
        assertEquals(
                List.of(
                        "first-motion: first-motion shaft",
                        "front: front bearing",
                        "input-gear: input gear",
                        "layshaft: layshaft",
                        "cluster-driven: constant wheel",
                        "cluster-second: cluster second gear",
                        "cluster-first: cluster first gear",
                        "cluster-reverse: cluster reverse gear",
                        "second-motion: second motion shaft",
                        "pilot: pilot bearing",
                        "2-3-sleeve: 2-3 sleeve",
                        "2-3-hub: 2-3 hub",
                        "second: second gear",
                        "second-needles: second needle bearing",
                        "1-sleeve: low sleeve",
                        "1-hub: 1 hub",
                        "first-rim: first rim",
                        "reverse: reverse gear",
                        "final-drive-pinion: final drive pinion",
                        "spindle: spindle",
                        "reverse-idler: reverse idler",
                        "input-gear-clutching-teeth: input gear clutching teeth",
                        "input-gear-ring: input gear blocking ring",
                        "second-clutching-teeth: second clutching teeth",
                        "differential: differential",
                        "crown-wheel: crown wheel",
                        "near-side-half-shaft: near side half-shaft",
                        "off-side-half-shaft: off side half-shaft",
                        "1-R-rail: low rail",
                        "1-R-detent: 1-R detent",
                        "1-fork: 1 fork",
                        "reverse-idler-fork: reverse idler fork",
                        "2-3-rail: 2-3 rail",
                        "2-3-detent: 2-3 detent",
                        "2-3-fork: upper fork",
                        "interlock: interlock",
                        "interlock-plunger: interlock plunger between the 1-R and 2-3 rails",
                        "clutch: plate clutch"),
                DUNLIN.parts().values().stream()
                        .filter(part -> !(part instanceof Fitting))
                        .map(part -> part.id() + ": " + part.name())
                        .toList());
    }

    @Test
    void other_names_are_those_typed_with_the_part_and_apart_from_it() {
        assertEquals(List.of("driven wheel"), DUNLIN.gear("cluster-driven").also());
        assertEquals(List.of("top fork"), DUNLIN.the(Part.class, "2-3-fork").also());
    }

    @Test
    void sides_engage_what_was_typed_or_the_free_gear_next_to_the_sleeve() {
        assertEquals(
                Map.of(
                        Side.FRONT,
                        new Engagement.Couples(
                                "input-gear", "input-gear-clutching-teeth", Optional.of("input-gear-ring")),
                        Side.REAR,
                        new Engagement.Couples("second", "second-clutching-teeth", Optional.empty())),
                DUNLIN.member("2-3-sleeve").sides());
        assertEquals(
                Map.of(Side.REAR, new Engagement.Meshes(List.of(new Mesh("first-rim", "cluster-first")))),
                DUNLIN.member("1-sleeve").sides());
        assertEquals(
                Map.of(
                        Side.REAR,
                        new Engagement.Meshes(List.of(
                                new Mesh("reverse-idler", "cluster-reverse"), new Mesh("reverse-idler", "reverse")))),
                DUNLIN.member("reverse-idler").sides());
    }

    @Test
    void gears_sit_on_shaft_sleeve_or_differential() {
        assertEquals(Seat.FIXED, DUNLIN.gear("reverse").seat());
        assertEquals(Seat.FREE, DUNLIN.gear("second").seat());
        Gear rim = DUNLIN.gear("first-rim");
        assertEquals("1-sleeve RIM", rim.carrier() + " " + rim.seat());
        Gear idler = DUNLIN.gear("reverse-idler");
        assertEquals("spindle SLIDING", idler.carrier() + " " + idler.seat());
        assertEquals("differential", DUNLIN.gear("crown-wheel").carrier());
    }

    @Test
    void bearings_lie_between_two_things() {
        assertEquals(
                List.of(
                        "front first-motion case",
                        "pilot second-motion first-motion",
                        "second-needles second-motion second"),
                DUNLIN.all(Bearing.class)
                        .map(bearing -> "%s %s %s".formatted(bearing.id(), bearing.inner(), bearing.outer()))
                        .toList());
    }

    @Test
    void bearings_take_the_thrust_that_is_typed_and_nothing_is_known_of_others() {
        assertEquals(
                Optional.of(Set.of(Side.FRONT, Side.REAR)),
                DUNLIN.the(Bearing.class, "front").thrust());
        assertEquals(
                Optional.of(Set.of(Side.FRONT)),
                DUNLIN.the(Bearing.class, "pilot").thrust());
        assertEquals(
                Optional.empty(), DUNLIN.the(Bearing.class, "second-needles").thrust());
    }

    @Test
    void one_rail_takes_both_its_forks_along() {
        assertEquals(
                List.of("1-fork", "reverse-idler-fork"),
                DUNLIN.the(Rail.class, "1-R-rail").forks());
        assertEquals("1-R-rail", DUNLIN.the(Fork.class, "reverse-idler-fork").rail());
        assertEquals(new Gate(List.of("2-3-rail", "1-R-rail")), DUNLIN.gate());
        Interlock interlock = DUNLIN.the(Interlock.class, "interlock");
        assertEquals(InterlockKind.PINS, interlock.form());
        assertEquals(List.of("1-R-rail", "2-3-rail"), interlock.rails());
        assertEquals(List.of("interlock-plunger"), interlock.pieces());
    }

    @Test
    void the_drive_enters_by_the_input_and_leaves_by_the_differential() {
        assertEquals("first-motion", DUNLIN.input());
        assertEquals("first-motion", DUNLIN.the(Clutch.class, "clutch").drives());
        assertEquals(List.of("near-side-half-shaft", "off-side-half-shaft"), DUNLIN.outputs());
        assertEquals(
                "near side wheel",
                DUNLIN.the(HalfShaft.class, "near-side-half-shaft").wheel());
    }
}
