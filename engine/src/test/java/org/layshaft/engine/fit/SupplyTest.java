package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.Interchange;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.kb.catalogue.Supersession;

class SupplyTest {
    private static final SerialRange EARLY = range(1, 499);
    private static final SerialRange LATE = range(500, 999);

    private static SerialRange range(int from, int to) {
        return new SerialRange(OptionalInt.of(from), OptionalInt.of(to));
    }

    private static Supersession replaced(String was, String by, SerialRange serials, String... with) {
        return new Supersession(was, Optional.ofNullable(by), serials, List.of(with), "");
    }

    private static Supply supply(String asked, SerialRange boxes, Supersession... supersessions) {
        Catalogue catalogue = new Catalogue(
                Map.of(),
                Map.of(),
                Map.of(),
                List.of(supersessions),
                List.of(new Interchange("A2", "A", List.of(), ""), new Interchange("B2", "B", List.of(), "")));
        return Supply.of(asked, boxes, catalogue);
    }

    @Test
    void a_chain_is_followed_to_its_end_and_brings_what_each_step_wants() {
        Supply supply =
                supply("A", EARLY, replaced("A", "B", SerialRange.ALL, "X"), replaced("B", "C", EARLY, "Y", "X"));
        assertEquals("C", supply.last());
        assertEquals(List.of("X", "Y"), supply.with());
        assertEquals(Supply.End.SUPPLIED, supply.end());
    }

    @Test
    void a_step_for_other_serial_numbers_is_not_taken() {
        Supply supply = supply("A", EARLY, replaced("A", "B", LATE));
        assertEquals("A", supply.last());
        assertEquals(Supply.End.SUPPLIED, supply.end());
    }

    @Test
    void a_step_for_some_of_the_boxes_depends_on_the_serial_number() {
        Supply supply = supply("A", range(400, 600), replaced("A", "B", LATE));
        assertEquals("A", supply.last());
        assertEquals(Supply.End.DEPENDS_ON_SERIAL, supply.end());
        assertEquals(1, supply.depending().size());
    }

    @Test
    void a_chain_may_break_off() {
        Supply supply = supply("A", LATE, replaced("A", "B", SerialRange.ALL), replaced("B", null, SerialRange.ALL));
        assertEquals("B", supply.last());
        assertEquals(Supply.End.WITHDRAWN, supply.end());
    }

    @Test
    void it_runs_one_way_and_so_does_an_interchange() {
        Supersession oneWay = replaced("A", "B", SerialRange.ALL);
        assertEquals("B", supply("B", EARLY, oneWay).last());
        assertEquals(
                List.of("A2"),
                supply("A", EARLY, oneWay).mayStandIn().stream()
                        .map(Interchange::use)
                        .toList());
        assertEquals(List.of(), supply("A2", EARLY, oneWay).mayStandIn());
    }
}
