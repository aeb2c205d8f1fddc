package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Suspect;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Part;

/** Published symptoms and causes both ways: the fault set shows the symptom, the symptom told lists the fault. */
class PublishedSymptomsTest {
    private static final int PUBLISHED = 107;

    private static final List<PublishedRow> ROWS = Stream.concat(
                    PublishedNoises.ROWS.stream(), PublishedShifts.ROWS.stream())
            .toList();

    @Test
    void every_published_row_is_tried_or_left_out_with_a_reason() {
        Set<String> ids = new HashSet<>();
        ROWS.forEach(row -> assertTrue(ids.add(row.id()), row.id()));
        LeftOut.ROWS.forEach(row -> assertTrue(ids.add(row.id()), row.id()));
        assertEquals(PUBLISHED, ids.size());
    }

    @Test
    void a_fault_shows_its_published_symptom() {
        assertCovered("forward", ROWS.stream().filter(row -> !shows(row)).toList());
    }

    @Test
    void a_published_symptom_lists_its_fault() {
        assertCovered("backward", ROWS.stream().filter(row -> !isListed(row)).toList());
    }

    /** At least 95 of a hundred rows that may be cited and whose part some demo box has, those left out counted against us. */
    private static void assertCovered(String way, List<PublishedRow> failing) {
        long all = ROWS.size() + LeftOut.ROWS.stream().filter(LeftOut::applies).count();
        long cited = ROWS.stream().filter(PublishedRow::isCited).count();
        long citable = cited + LeftOut.ROWS.stream().filter(LeftOut::counts).count();
        long good = cited - failing.stream().filter(PublishedRow::isCited).count();
        List<String> report = new ArrayList<>();
        report.add("%s: %d of %d applicable rows that may be cited (%d %%), %d of all %d applicable"
                .formatted(way, good, citable, 100 * good / citable, ROWS.size() - failing.size(), all));
        failing.forEach(row -> report.add("  fails: %s".formatted(row)));
        LeftOut.ROWS.forEach(row -> report.add("  left out: %s, %s".formatted(row.id(), row.why())));
        System.out.println(String.join("\n", report));
        assertTrue(100 * good >= 95 * citable, String.join("\n", report));
    }

    /** Whether in some way that the fault may be, everything noticed is shown just as it is told, or may be. */
    private static boolean shows(PublishedRow row) {
        Clues clues = Desk.clues(row.layout(), row.evidence());
        return Desk.book(row.layout()).dictionary().entries().stream()
                .filter(row::means)
                .map(entry -> Assessment.of(entry.shown(), clues))
                .anyMatch(assessment -> assessment.fits()
                        && IntStream.of(assessment.explained()).allMatch(value -> value >= Weights.PERHAPS));
    }

    private static boolean isListed(PublishedRow row) {
        return Desk.suspects(row.layout(), row.evidence()).singles().stream()
                .map(Suspect::faults)
                .flatMap(List::stream)
                .anyMatch(fault -> means(row, fault));
    }

    private static boolean means(PublishedRow row, Fault fault) {
        Part part = Desk.layout(row.layout()).the(Part.class, fault.part());
        return row.means(part.kind().word(), part.id(), fault.mode());
    }
}
