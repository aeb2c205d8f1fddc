package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspects;

/** Repairs as they were told: what was found in the end stands high among the suspects. */
class PublishedCasesTest {

    @Test
    void what_was_found_stands_among_the_first() {
        List<String> report = new ArrayList<>();
        int five = 0;
        int ten = 0;
        for (PublishedCase told : PublishedCases.ALL) {
            int place = place(told);
            five += place <= 5 ? 1 : 0;
            ten += place <= 10 ? 1 : 0;
            report.add("%s: %s".formatted(told.id(), place == Integer.MAX_VALUE ? "not listed" : said(told, place)));
        }
        report.add("first five %d, first ten %d of %d".formatted(five, ten, PublishedCases.ALL.size()));
        System.out.println(String.join("\n", report));
        assertEquals(17, PublishedCases.ALL.size());
        assertTrue(five >= 12 && ten >= 15, String.join("\n", report));
    }

    @Test
    void every_confirmed_cause_is_a_fault_that_the_box_can_have() {
        PublishedCases.ALL.forEach(told -> assertFalse(told.known().isEmpty(), told.id()));
    }

    private static String said(PublishedCase told, int place) {
        List<Suspect> listed = listed(told);
        Suspect found = listed.get(place - 1);
        long tied = listed.stream()
                .filter(other -> other.faults().size() == found.faults().size() && other.rank() == found.rank())
                .count();
        return "place %d, rank %d, %d of that rank: %s".formatted(place, found.rank(), tied, found.says());
    }

    /** In the list as it is shown, pairs after single faults. */
    private static int place(PublishedCase told) {
        List<Suspect> listed = listed(told);
        for (int i = 0; i < listed.size(); i++) {
            if (told.means(listed.get(i))) {
                return i + 1;
            }
        }
        return Integer.MAX_VALUE;
    }

    private static List<Suspect> listed(PublishedCase told) {
        Suspects suspects = Desk.suspects(told.layout(), told.evidence());
        return Stream.concat(suspects.singles().stream(), suspects.pairs().stream())
                .toList();
    }
}
