package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.testing.Layouts;

/** A range section: planets that are carried round, and a sleeve that ties their ring to the case or to the carrier. */
class PlanetsTest {
    private static final Layout RANGE = Layouts.built("""
            "shafts": {
              "input": { "along": [{ "gear": "sun", "teeth": 36, "meshes": "planet" }] },
              "planets": { "carried_by": "output", "count": 5, "along": [{ "gear": "planet", "teeth": 22 }] },
              "annulus-shaft": { "along": [
                { "gear": "annulus", "teeth": 80, "internal": true, "meshes": "planet" },
                { "sleeve": "range", "front": "case-dogs", "rear": "carrier-dogs", "rings": "rear" }
              ] },
              "output": { "along": [{ "dogs": "carrier-dogs", "name": "carrier teeth", "also": ["inner dogs"] }] },
              "case-teeth": { "held": true, "along": [{ "dogs": "case-dogs" }] }
            }""");

    @Test
    void planets_are_carried_and_counted() {
        Shaft planets = RANGE.shaft("planets");
        assertEquals(Optional.of("output"), planets.carriedBy());
        assertEquals(5, planets.count());
        assertEquals(Seat.FIXED, RANGE.gear("planet").seat());
        assertEquals(Optional.empty(), RANGE.shaft("output").carriedBy());
        assertEquals(1, RANGE.shaft("output").count());
    }

    @Test
    void a_dog_ring_is_a_part_on_its_shaft() {
        DogRing onCarrier = RANGE.the(DogRing.class, "carrier-dogs");
        assertEquals("output", onCarrier.shaft());
        assertEquals("carrier teeth", onCarrier.name());
        assertEquals(List.of("inner dogs"), onCarrier.also());
        DogRing inCase = RANGE.the(DogRing.class, "case-dogs");
        assertEquals("case-teeth: case dogs", inCase.shaft() + ": " + inCase.name());
    }

    @Test
    void a_sleeve_couples_dog_rings_with_clutching_teeth_and_rings_of_their_own() {
        assertEquals(
                Map.of(
                        Side.FRONT,
                        new Engagement.Couples("case-dogs", "case-dogs-clutching-teeth", Optional.empty()),
                        Side.REAR,
                        new Engagement.Couples(
                                "carrier-dogs", "carrier-dogs-clutching-teeth", Optional.of("carrier-dogs-ring"))),
                RANGE.member("range-sleeve").sides());
        assertEquals(
                "carrier dogs blocking ring",
                RANGE.the(Part.class, "carrier-dogs-ring").name());
    }

    @Test
    void dog_rings_are_not_coupled_without_being_named() {
        Layout layout = Layouts.built("""
                "shafts": { "input": { "along": [{ "sleeve": "lock" }, { "dogs": "dogs" }] } }""");
        assertEquals(Map.of(), layout.member("lock-sleeve").sides());
    }
}
