package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.testing.Layouts;

/** What stands around the gear train without being typed: which layouts get which. */
class FittingsTest {
    private static final String TWO_GEARS = """
            "shafts": { "input": { "along": [
              { "gear": "first", "teeth": 20, "free": true }, { "sleeve": "1-2", "rings": "front" },
              { "gear": "second", "teeth": 30, "free": true }
            ] } }
            """;

    @Test
    void a_box_with_a_clutch_has_engine_and_clutch_side_and_one_without_has_not() {
        assertEquals(
                List.of(
                        "1-2-keys of 1-2-sleeve: 1-2 keys and springs",
                        "first-thrust-washer of first: first thrust washer",
                        "second-thrust-washer of second: second thrust washer",
                        "selector-finger of gear: selector finger",
                        "gear-lever of gear: gear lever",
                        "lever-bush of gear: lever bush",
                        "lever-boot of gear: lever boot",
                        "linkage of gear: shift linkage",
                        "engine: engine",
                        "release-bearing of clutch: release bearing",
                        "clutch-housing: clutch housing",
                        "mountings: mountings",
                        "oil: oil",
                        "seals: seals and gaskets",
                        "breather: breather",
                        "box-case: box case"),
                told(Layouts.built(TWO_GEARS)));
        Set<PartKind> without = kinds(Layouts.built(TWO_GEARS + ", \"clutch\": false"));
        for (PartKind gone : List.of(PartKind.ENGINE, PartKind.RELEASE_BEARING, PartKind.CLUTCH_HOUSING)) {
            assertEquals(false, without.contains(gone), gone.word());
        }
    }

    @Test
    void keys_belong_to_a_sleeve_with_rings_only() {
        assertEquals(
                false,
                kinds(Layouts.built(TWO_GEARS.replace("\"front\"", "\"none\""))).contains(PartKind.KEYS));
    }

    @Test
    void what_the_lever_works_by_says_what_is_between() {
        assertEquals(
                List.of("selector-finger", "gear-lever", "lever-bush", "lever-boot"), lever("direct", "[\"1-2\"]"));
        assertEquals(
                List.of("selector-finger", "gear-lever", "lever-bush", "lever-boot", "linkage"),
                lever("rods", "[\"1-2\"]"));
        assertEquals(
                List.of("selector-finger", "gear-lever", "lever-bush", "lever-boot", "shift-cable"),
                lever("cables", "[\"1-2\"]"));
        assertEquals(List.of("selector-finger", "actuator"), lever("electric", "[\"1-2\"]"));
        assertEquals(List.of("selector-finger", "actuator"), lever("air", "[\"1-2\"]"));
    }

    @Test
    void a_cable_for_the_gate_is_there_where_rails_are_chosen_between() {
        Layout layout = Layouts.built("""
                "shafts": { "input": { "along": [
                  { "gear": "first", "teeth": 20, "free": true }, { "sleeve": "1" },
                  { "gear": "second", "teeth": 30, "free": true }, { "sleeve": "2" }
                ] } },
                "selector": { "rails": ["1", "2"], "worked_by": "cables", "lock_out": { "2": "front" } }
                """);
        assertEquals(
                "lock-out of 2-rail, front: reverse lock-out",
                told(layout).stream()
                        .filter(told -> told.startsWith("lock-out"))
                        .findFirst()
                        .orElseThrow());
        assertEquals(true, kinds(layout).containsAll(Set.of(PartKind.SHIFT_CABLE, PartKind.GATE_CABLE)));
    }

    @Test
    void another_lever_has_what_is_between_it_and_its_rails_under_its_own_name() {
        Layout layout = Layouts.built(TWO_GEARS + """
                , "selector": { "rails": [], "levers": [{ "lever": "range", "worked_by": "air", "rails": ["1-2"] }] }
                """);
        assertEquals(
                List.of("range-actuator of range: range actuator"),
                told(layout).stream().filter(told -> told.contains("range")).toList());
        assertEquals(false, kinds(layout).contains(PartKind.GEAR_LEVER));
    }

    @Test
    void a_drum_takes_the_place_of_the_finger() {
        Layout layout = Layouts.built(TWO_GEARS + """
                , "selector": { "rails": ["1-2"], "drum": [{ "1-2": "front" }, { "1-2": "rear" }] }
                """);
        assertEquals(true, kinds(layout).contains(PartKind.SHIFT_DRUM));
        assertEquals(false, kinds(layout).contains(PartKind.SELECTOR_FINGER));
    }

    private static List<String> lever(String workedBy, String rails) {
        Layout layout = Layouts.built(
                TWO_GEARS + ", \"selector\": { \"rails\": %s, \"worked_by\": \"%s\" }".formatted(rails, workedBy));
        return layout.all(Fitting.class)
                .filter(fitting -> fitting.of().filter("gear"::equals).isPresent())
                .map(Fitting::id)
                .toList();
    }

    static Set<PartKind> kinds(Layout layout) {
        return layout.all(Fitting.class).map(Fitting::kind).collect(Collectors.toSet());
    }

    static List<String> told(Layout layout) {
        return layout.all(Fitting.class)
                .map(fitting -> fitting.id()
                        + fitting.of().map(of -> " of " + of).orElse("")
                        + fitting.side().map(side -> ", " + side.word()).orElse("")
                        + ": " + fitting.name())
                .toList();
    }
}
