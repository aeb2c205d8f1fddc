package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SpacingTest {

    private static Spacing of(String... ids) {
        Spacing spacing = new Spacing();
        Stream.of(ids).forEach(spacing::place);
        return spacing;
    }

    @Test
    void keepsDistancesAndColumns() {
        Spacing spacing = of("a", "b", "c", "d");
        assertTrue(spacing.atLeast("a", "b", 10));
        assertTrue(spacing.atLeast("c", "d", 25));
        assertTrue(spacing.exactly("a", "c", 0));
        assertTrue(spacing.exactly("b", "d", 0));
        Map<String, Double> places = spacing.places();
        assertEquals(0, places.get("a"));
        assertEquals(0, places.get("c"));
        assertEquals(25, places.get("b"));
        assertEquals(25, places.get("d"));
    }

    @Test
    void standsHalfWayWhereThereIsRoom() {
        Spacing spacing = of("a", "b", "c");
        spacing.exactly("a", "c", 100);
        spacing.atLeast("a", "b", 20);
        spacing.atLeast("b", "c", 40);
        assertEquals(40, spacing.places().get("b"), 1e-9);
    }

    @Test
    void refusesWhatContradictsAndKeepsTheRest() {
        Spacing spacing = of("a", "b", "c", "d");
        spacing.atLeast("a", "b", 10);
        spacing.atLeast("c", "d", 10);
        assertTrue(spacing.exactly("a", "d", 0));
        assertFalse(spacing.exactly("b", "c", 0));
        Map<String, Double> places = spacing.places();
        assertEquals(places.get("a"), places.get("d"), 1e-9);
        assertTrue(places.get("a") < places.get("b"));
        assertTrue(places.get("c") < places.get("d"));
    }

    @Test
    void refusesAnOrderThatRunsInACircle() {
        Spacing spacing = of("a", "b", "c");
        assertTrue(spacing.atLeast("a", "b", 1));
        assertTrue(spacing.atLeast("b", "c", 1));
        assertFalse(spacing.atLeast("c", "a", 1));
        assertEquals(2, spacing.places().get("c") - spacing.places().get("a"), 1e-9);
    }
}
