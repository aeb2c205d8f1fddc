package org.layshaft.engine.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.failure.Situation;

class ShownTest {
    private final Cells cells = new Cells(List.of("1", "2", "R"), List.of("growls", "rattles"));

    @Test
    void every_notice_in_every_cell_has_a_number_of_its_own_that_leads_back() {
        BitSet numbers = new BitSet();
        for (Cell cell : cells.all()) {
            for (String notice : List.of("growls", "rattles")) {
                int number = cells.number(cell, notice);
                assertFalse(numbers.get(number));
                numbers.set(number);
                assertEquals(cell, cells.cell(number));
                assertEquals(notice, cells.notice(number));
            }
        }
        assertEquals(cells.size(), numbers.cardinality());
        assertEquals(cells.size(), numbers.length());
    }

    @Test
    void a_situation_in_gear_is_asked_of_every_gear_and_any_other_once() {
        assertEquals(List.of("1", "2", "R"), cells.gears(Situation.PULLING));
        assertEquals(List.of(World.NEUTRAL), cells.gears(Situation.NEUTRAL_PEDAL_UP));
    }

    @Test
    void there_is_no_cell_for_a_gear_in_neutral() {
        Cell none = new Cell(Situation.NEUTRAL_PEDAL_UP, "1");
        assertThrows(IllegalArgumentException.class, () -> cells.number(none, "growls"));
        Cell some = new Cell(Situation.PULLING, "1");
        assertThrows(IllegalArgumentException.class, () -> cells.number(some, "sings"));
    }

    @Test
    void what_one_shows_for_certain_is_certain_of_both() {
        Signs one = signs(new int[] {1, 2}, 3);
        Signs other = signs(new int[] {3}, 2, 4);
        Signs both = one.and(other);
        assertEquals(signs(new int[] {1, 2, 3}, 4), both);
        assertTrue(both.has(4));
        assertFalse(both.has(5));
    }

    @Test
    void heat_matters_where_either_depends_on_it() {
        Signs plain = signs(new int[] {1});
        Shown alike = new Shown(plain, plain);
        Shown warm = new Shown(Signs.none(), signs(new int[] {2}));
        Shown twice = alike.and(alike);
        assertSame(twice.cold(), twice.hot());
        assertEquals(signs(new int[] {1, 2}), alike.and(warm).hot());
        assertEquals(plain, alike.and(warm).cold());
    }

    private static Signs signs(int[] certain, int... perhaps) {
        Signs signs = Signs.none();
        for (int number : certain) {
            signs.certain().set(number);
        }
        for (int number : perhaps) {
            signs.perhaps().set(number);
        }
        return signs;
    }
}
