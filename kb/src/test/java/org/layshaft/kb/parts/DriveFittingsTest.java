package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.testing.Layouts;

/** What comes with differentials, half-shafts, chains, outputs, and with countershafts that share. */
class DriveFittingsTest {
    private static final String AXLE = """
            "clutch": false, "shafts": { "input": { "along": [{ "gear": "pinion", "teeth": 10, "meshes": "ring-gear" }] } },
            """;

    @Test
    void a_bevel_axle_has_a_final_drive_to_set_and_joints_at_both_ends_of_its_half_shafts() {
        Layout layout =
                Layouts.built(AXLE + "\"differential\": { \"ring_gear\": { \"teeth\": 41, \"crown\": \"left\" } }");
        assertEquals(
                List.of(
                        "differential-side-gears of differential: differential side gears",
                        "differential-pinions of differential: differential pinions",
                        "differential-cross-shaft of differential: differential cross-shaft",
                        "differential-carrier-bearings of differential: differential carrier bearings",
                        "final-drive of ring-gear: final drive",
                        "left-inner-joint of left-half-shaft: left inner joint",
                        "left-outer-joint of left-half-shaft: left outer joint",
                        "left-wheel-bearing of left-half-shaft: left wheel bearing",
                        "right-inner-joint of right-half-shaft: right inner joint",
                        "right-outer-joint of right-half-shaft: right outer joint",
                        "right-wheel-bearing of right-half-shaft: right wheel bearing",
                        "tyres: tyres"),
                FittingsTest.told(layout).subList(0, 12));
    }

    @Test
    void a_rigid_axle_has_no_joints_and_gears_on_parallel_shafts_nothing_to_set() {
        Layout rigid = Layouts.built(
                AXLE
                        + "\"differential\": { \"rigid\": true, \"ring_gear\": { \"teeth\": 41 }, \"limited_slip\": { \"bias_ratio\": 2 } }");
        assertEquals(0, count(rigid, PartKind.INNER_JOINT) + count(rigid, PartKind.OUTER_JOINT));
        assertEquals(0, count(rigid, PartKind.FINAL_DRIVE));
        assertEquals(2, count(rigid, PartKind.WHEEL_BEARING));
        assertEquals(1, count(rigid, PartKind.LIMITED_SLIP));
    }

    @Test
    void a_propeller_shaft_lies_behind_an_output_shaft_and_none_where_a_chain_turns_the_wheel() {
        Layout box = Layouts.built("""
                "shafts": {
                  "input": { "along": [{ "gear": "one", "teeth": 20, "meshes": "other" }] },
                  "output": { "along": [{ "gear": "other", "teeth": 30 }] }
                }""");
        assertEquals(List.of("propeller-shaft of output: propeller shaft"), of(box, PartKind.JOINT));
        Layout chained = Layouts.built("""
                "shafts": {
                  "input": { "along": [{ "gear": "one", "teeth": 20, "chain": "other" }] },
                  "output": { "along": [{ "gear": "other", "teeth": 30 }] }
                }""");
        assertEquals(List.of(), of(chained, PartKind.JOINT));
        assertEquals(List.of("one-chain of one: one chain"), of(chained, PartKind.CHAIN));
    }

    @Test
    void countershafts_that_share_the_drive_are_timed_to_each_other() {
        Layout twin = Layouts.built(twin("40"));
        assertEquals(List.of("countershaft-timing: timing of the countershafts"), of(twin, PartKind.TIMING));
        assertEquals(List.of(), of(Layouts.built(twin("41")), PartKind.TIMING));
    }

    /** @param teeth of the one gear of the right countershaft that may differ from its like on the left */
    private static String twin(String teeth) {
        return """
                "shafts": {
                  "input": { "along": [{ "gear": "drive", "teeth": 30, "meshes": ["left-driven", "right-driven"] }] },
                  "left": { "along": [{ "gear": "left-driven", "teeth": 40 }, { "gear": "left-first", "teeth": 22 }] },
                  "right": { "along": [{ "gear": "right-driven", "teeth": %s }, { "gear": "right-first", "teeth": 22 }] },
                  "output": { "along": [{ "gear": "first", "teeth": 48, "meshes": ["left-first", "right-first"] }] }
                }""".formatted(teeth);
    }

    private static long count(Layout layout, PartKind kind) {
        return layout.all(Fitting.class)
                .filter(fitting -> fitting.kind() == kind)
                .count();
    }

    private static List<String> of(Layout layout, PartKind kind) {
        return FittingsTest.told(layout).stream()
                .filter(told -> layout.all(Fitting.class)
                        .anyMatch(fitting -> fitting.kind() == kind && told.startsWith(fitting.id())))
                .toList();
    }
}
