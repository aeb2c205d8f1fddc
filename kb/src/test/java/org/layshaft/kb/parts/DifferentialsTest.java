package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.LimitedSlip;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.testing.Layouts;

/** A transfer box with a differential that can be locked, and the axles before and behind it. */
class DifferentialsTest {
    private static final String SHAFTS = """
            "shafts": {
              "input": { "along": [{ "gear": "lock-gear", "teeth": 20 }] },
              "to-front": { "along": [
                { "sleeve": "lock", "rear": "centre", "rings": "none" },
                { "gear": "front-pinion", "teeth": 11 }
              ] },
              "to-rear": { "along": [{ "gear": "rear-pinion", "teeth": 11 }] }
            },
            "differentials": [
              { "id": "centre", "on": "input", "shafts": ["to-front", "to-rear"], "name": "centre differential" },
              {
                "id": "front-axle",
                "ring_gear": { "id": "front-crown", "teeth": 41, "crown": "right", "meshes": "front-pinion" },
                "half_shafts": ["front-left", "front-right"]
              },
              {
                "id": "rear-axle",
                "ring_gear": { "id": "rear-crown", "teeth": 41, "crown": "left", "meshes": "rear-pinion" },
                "half_shafts": ["rear-left", "rear-right"],
                "limited_slip": { "preload_nm": 60, "bias_ratio": 2.5 }
              }
            ]""";
    private static final Layout CAR = Layouts.built(SHAFTS);

    @Test
    void a_shaft_drives_the_case_where_there_is_no_ring_gear() {
        Differential centre = CAR.the(Differential.class, "centre");
        assertEquals(Optional.empty(), centre.ringGear());
        assertEquals(Optional.of("input"), centre.shaft());
        assertEquals(List.of("to-front", "to-rear"), centre.sides());
        assertEquals(Optional.empty(), centre.limitedSlip());
        assertEquals("centre differential", centre.name());
    }

    @Test
    void each_axle_has_its_ring_gear_and_half_shafts() {
        Differential front = CAR.the(Differential.class, "front-axle");
        assertEquals(Optional.of("front-crown"), front.ringGear());
        assertEquals(List.of("front-left-half-shaft", "front-right-half-shaft"), front.sides());
        assertEquals("front axle", front.name());
        assertEquals("front-axle", CAR.gear("front-crown").carrier());
        HalfShaft left = CAR.the(HalfShaft.class, "front-left-half-shaft");
        assertEquals("front left half-shaft, front left wheel", left.name() + ", " + left.wheel());
        assertEquals("front-axle", left.differential());
    }

    @Test
    void limited_slip_is_kept_as_stated() {
        assertEquals(
                Optional.of(new LimitedSlip(OptionalDouble.of(60), OptionalDouble.of(2.5))),
                CAR.the(Differential.class, "rear-axle").limitedSlip());
    }

    @Test
    void a_sleeve_locks_a_differential() {
        assertEquals(
                Map.of(Side.REAR, new Engagement.Couples("centre", "centre-clutching-teeth", Optional.empty())),
                CAR.member("lock-sleeve").sides());
    }

    @Test
    void the_drive_leaves_by_every_half_shaft_unless_it_is_said_where() {
        assertEquals(
                List.of(
                        "front-left-half-shaft",
                        "front-right-half-shaft",
                        "rear-left-half-shaft",
                        "rear-right-half-shaft"),
                CAR.outputs());
        assertEquals(
                List.of("front-axle", "rear-axle"),
                CAR.finalDrives().stream().map(Differential::id).toList());
        Layout rearOnly =
                Layouts.built(SHAFTS + ", \"output\": [\"rear-left\", \"rear-right-half-shaft\", \"to-front\"]");
        assertEquals(List.of("rear-left-half-shaft", "rear-right-half-shaft", "to-front"), rearOnly.outputs());
        assertEquals(
                List.of("centre", "rear-axle"),
                rearOnly.finalDrives().stream().map(Differential::id).toList());
    }

    @Test
    void take_offs_are_told_apart_from_outputs() {
        Layout layout = Layouts.built(SHAFTS + ", \"output\": \"to-rear\", \"take_off\": [\"to-front\"]");
        assertEquals(List.of("to-rear"), layout.outputs());
        assertEquals(List.of("to-front"), layout.takeOffs());
        assertEquals(List.of(), CAR.takeOffs());
    }
}
