package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.testing.Layouts;

/** Where gears have their teeth, and which way two in mesh turn each other. */
class TeethTest {
    private static final Layout LAYOUT = Layouts.built("""
            "helix_deg": 15, "pressure_angle_deg": 17.5,
            "shafts": {
              "input": { "along": [
                { "gear": "sun", "teeth": 30, "meshes": "planet", "hand": "left" },
                { "gear": "small-sprocket", "teeth": 30, "helix_deg": 0, "chain": "large-sprocket" },
                { "gear": "pinion", "teeth": 11, "helix_deg": 35, "hand": "right", "meshes": ["crown", "other-crown"] }
              ] },
              "planets": { "along": [
                { "gear": "planet", "teeth": 18, "meshes": "annulus", "pressure_angle_deg": 20 }
              ] },
              "ring": { "along": [{ "gear": "annulus", "teeth": 66, "internal": true }] },
              "front": { "along": [{ "gear": "large-sprocket", "teeth": 36 }] },
              "axle": { "along": [
                { "gear": "crown", "teeth": 43, "crown": "left" },
                { "gear": "other-crown", "teeth": 43, "crown": "right" }
              ] }
            }""");

    @Test
    void a_gear_has_its_teeth_where_it_or_its_mate_says() {
        Map<String, GearForm> forms = LAYOUT.all(Gear.class).collect(Collectors.toMap(Gear::id, Gear::form));
        assertEquals(
                Map.of(
                        "sun", GearForm.EXTERNAL,
                        "planet", GearForm.EXTERNAL,
                        "annulus", GearForm.INTERNAL,
                        "small-sprocket", GearForm.SPROCKET,
                        "large-sprocket", GearForm.SPROCKET,
                        "pinion", GearForm.BEVEL,
                        "crown", GearForm.BEVEL,
                        "other-crown", GearForm.BEVEL),
                forms);
    }

    @Test
    void two_gears_turn_each_other_as_their_teeth_make_them() {
        assertEquals(
                List.of(
                        new Mesh("sun", "planet", MeshKind.EXTERNAL),
                        new Mesh("small-sprocket", "large-sprocket", MeshKind.CHAIN),
                        new Mesh("pinion", "crown", MeshKind.BEVEL),
                        new Mesh("pinion", "other-crown", MeshKind.BEVEL_OPPOSITE),
                        new Mesh("planet", "annulus", MeshKind.INTERNAL)),
                LAYOUT.meshes());
        assertEquals(
                List.of(-1, 1, 1, -1, 1),
                LAYOUT.meshes().stream().map(mesh -> mesh.kind().sense()).toList());
    }

    @Test
    void a_sliding_gear_comes_into_mesh_inside_a_ring() {
        Layout layout = Layouts.built("""
                "shafts": { "input": { "along": [
                  { "sliding": "slider", "teeth": 20, "front": { "meshes": "annulus" } },
                  { "gear": "annulus", "teeth": 60, "internal": true }
                ] } }""");
        assertEquals(
                List.of(new Mesh("slider", "annulus", MeshKind.INTERNAL)),
                layout.everyMesh().toList());
    }

    @Test
    void angles_are_those_of_the_gear_or_else_of_the_layout() {
        assertEquals(15, LAYOUT.gear("sun").helixDeg());
        assertEquals(0, LAYOUT.gear("small-sprocket").helixDeg());
        assertEquals(17.5, LAYOUT.gear("sun").pressureAngleDeg());
        assertEquals(20, LAYOUT.gear("planet").pressureAngleDeg());
        assertEquals(Optional.of(Hand.LEFT), LAYOUT.gear("sun").hand());
        assertEquals(Optional.of(Hand.RIGHT), LAYOUT.gear("pinion").hand());
        assertEquals(Optional.empty(), LAYOUT.gear("planet").hand());
    }

    @Test
    void a_pressure_angle_that_is_stated_nowhere_is_the_usual_one() {
        Layout layout =
                Layouts.built("\"shafts\": { \"input\": { \"along\": [{ \"gear\": \"lone\", \"teeth\": 20 }] } }");
        assertEquals(20, layout.gear("lone").pressureAngleDeg());
    }
}
