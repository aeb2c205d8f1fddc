package org.layshaft.kb.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.Reading;
import org.layshaft.kb.testing.Marked;

class CatalogueReadingTest {
    private static final Reading READING = PackReader.check(List.of(Marked.resource("sound-pack")));
    private static final Catalogue CATALOGUE = READING.knowledge().catalogue();

    @Test
    void facts_are_read_as_typed() {
        CataloguePart gear = CATALOGUE.part("D-101").orElseThrow();
        assertEquals(ComponentKind.GEAR, gear.kind());
        assertEquals("35", gear.facts().find(FactName.TEETH).orElseThrow().text());
        assertEquals(12.7, gear.facts().get(FactName.DIAMETRAL_PITCH).number());
        assertEquals("needles", gear.facts().get(FactName.HELD_BY).text());
        assertEquals("22 mm", gear.facts().get(FactName.SEAT_LENGTH_MM).shown());
        assertFalse(gear.facts().has(FactName.MODULE_MM));
        assertEquals("Drawn from the bin under the stairs.", gear.note());
        assertEquals("gear", CATALOGUE.part("D-102").orElseThrow().name());
    }

    @Test
    void what_was_measured_is_told_from_what_is_stated() {
        Facts gear = CATALOGUE.part("D-101").orElseThrow().facts();
        assertTrue(gear.get(FactName.SPAN_MM).measured());
        assertFalse(gear.get(FactName.TEETH).measured());
        CataloguePart shaft = CATALOGUE.part("D-100").orElseThrow();
        assertTrue(shaft.feature("cluster-second").get(FactName.TEETH).measured());
        assertFalse(shaft.feature("cluster-second").get(FactName.MODULE_MM).measured());
        assertEquals(Facts.NONE, shaft.feature("nowhere"));
    }

    @Test
    void sets_builds_and_what_replaces_what_are_read() {
        PartSet pair = CATALOGUE.set("D-S1").orElseThrow();
        assertEquals(SetShape.PAIR, pair.shape());
        assertEquals("D-102", pair.parts().get("mate"));
        assertTrue(pair.onlyWhole());
        assertEquals(SetShape.SINGLE, CATALOGUE.set("D-101").orElseThrow().shape());
        assertEquals(List.of("D-S1", "D-S2"), List.copyOf(CATALOGUE.sets().keySet()));
        assertTrue(CATALOGUE.sets().get("D-S2").oneDesign());

        List<Build> builds = List.copyOf(CATALOGUE.builds().values());
        assertEquals(
                List.of("early Dunlin", "dunlin-late"),
                builds.stream().map(Build::name).toList());
        assertTrue(builds.get(0).serials().contains(499));
        assertFalse(builds.get(0).serials().contains(500));
        assertEquals("serial numbers from 500", builds.get(1).serials().words());

        Supersession first = CATALOGUE.supersessions().get(0);
        assertEquals(Optional.of("D-102"), first.by());
        assertEquals(List.of("D-103"), first.with());
        assertEquals(Optional.empty(), CATALOGUE.supersessions().get(1).by());
        assertEquals("D-101", CATALOGUE.interchanges().get(0).inPlaceOf());
    }
}
