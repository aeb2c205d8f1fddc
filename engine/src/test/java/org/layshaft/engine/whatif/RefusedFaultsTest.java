package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/** Faults that cannot be: what is wrong, the value, and what can be. */
class RefusedFaultsTest {

    @Test
    void a_part_that_is_not_there_is_named() {
        assertEquals("Curlew has no part '6-7-fork'. Its parts are listed by 'words'.", refusal("6-7-fork bent"));
        assertEquals(
                "Curlew has no part ''. Its parts are listed by 'words'.", refusal(new Fault("", "bent", Map.of())));
    }

    @Test
    void a_mode_that_cannot_befall_the_part_is_told_with_those_that_can() {
        assertEquals(
                "The 3-4 fork cannot be 'seized'. It can be %s (known failure modes).".formatted(modesOf("3-4-fork")),
                refusal("3-4-fork seized"));
        // fixed on the countershaft, it cannot seize to it
        assertEquals(
                "The cluster third gear cannot be 'seized'. It can be %s (known failure modes)."
                        .formatted(modesOf("cluster-third")),
                refusal("cluster-third seized"));
    }

    @Test
    void a_part_that_nothing_is_known_to_befall_is_told_as_such() {
        KnowledgeBase trade = Bench.KNOWLEDGE;
        Reasoner knowingNothing = Reasoners.standard(
                new KnowledgeBase(trade.packs(), trade.layouts(), List.of(), trade.words(), trade.catalogue()));
        assertEquals(
                "The 3-4 rail cannot be 'bent'. No failure mode of it is known.",
                assertThrows(
                                UnanswerableException.class,
                                () -> knowingNothing.whatIf(Bench.layout("curlew"), Bench.faults("3-4-rail bent")))
                        .getMessage());
    }

    @Test
    void a_value_that_cannot_be_is_told_with_those_that_can() {
        assertEquals(
                "For '3-4 fork bent' the side cannot be 'left'. It can be front, rear.",
                refusal("3-4-fork bent side=left"));
        assertEquals(
                "For 'input shaft cut' the place cannot be 'third'. It can be input-bearing.",
                refusal("input cut place=third"));
        assertEquals(
                "For '5 fork broken' the at cannot be 'rear'. It can be front, neutral.",
                assertThrows(UnanswerableException.class, () -> Bench.whatIf("plover", "5-fork broken at=rear"))
                        .getMessage());
    }

    @Test
    void a_heading_under_which_nothing_is_told_is_named() {
        assertEquals(
                "For '3-4 fork bent' nothing is told by 'at'. Say side or extent.", refusal("3-4-fork bent at=front"));
        assertEquals(
                "For 'third gear stripped' nothing is told by 'side'. Leave it out.",
                refusal("third stripped side=front"));
    }

    @Test
    void everything_that_is_wrong_is_told_at_once() {
        List<String> told = refusal("6-7-fork bent; third bent; 3-4-fork bent side=up extent=much; first stripped")
                .lines()
                .toList();
        assertEquals(4, told.size(), told.toString());
        assertTrue(told.get(0).contains("6-7-fork") && told.get(1).contains("third gear cannot be 'bent'"));
        assertTrue(told.stream().anyMatch(line -> line.contains("'up'")));
        assertTrue(told.stream().anyMatch(line -> line.contains("'much'")));
    }

    @Test
    void a_spindle_with_one_gear_has_no_place_to_be_cut_at() {
        assertEquals(
                "What follows from 'idler-spindle cut' cannot be told: the idler spindle has no place that could be named.",
                refusal("idler-spindle cut"));
        assertTrue(refusal("idler-spindle cut place=reverse-idler").contains("has no place that could be named"));
    }

    @Test
    void two_faults_that_cannot_be_at_once_are_told() {
        assertEquals(
                "These faults cannot all be at once: '3-4-fork bent side=front', '3-4-fork bent side=rear'. Leave out or change '3-4-fork bent side=rear'.",
                refusal("3-4-fork bent side=front; 3-4-fork bent side=rear"));
        assertTrue(refusal("3-4-sleeve stuck at=front; 3-4-fork broken at=rear")
                .startsWith("These faults cannot all be at once"));
    }

    @Test
    void a_shaft_cut_in_two_places_is_more_than_is_reckoned_with() {
        assertTrue(refusal("countershaft cut place=cluster-driven; countershaft cut place=cluster-second")
                .startsWith("These faults cannot all be at once"));
    }

    @Test
    void more_possibilities_than_a_person_reads_are_refused_with_what_to_say() {
        assertEquals(
                "These faults leave more than 64 possibilities. Say more about them, for instance '1-2-fork bent side=front'.",
                refusal("1-2-fork bent; 3-4-fork bent; 5-R-fork bent; 3-4-sleeve stuck"));
        assertEquals(
                64,
                Bench.gear(Bench.whatIf("curlew", "1-2-fork bent; 3-4-fork bent; 5-R-fork bent"), "3")
                        .possibilities()
                        .size());
    }

    private static String modesOf(String part) {
        return Bench.KNOWLEDGE.failureModesOf(Bench.layout("curlew").the(Part.class, part)).stream()
                .map(FailureMode::name)
                .collect(Collectors.joining(", "));
    }

    private static String refusal(String faults) {
        return assertThrows(UnanswerableException.class, () -> Bench.whatIf("curlew", faults))
                .getMessage();
    }

    private static String refusal(Fault fault) {
        return assertThrows(
                        UnanswerableException.class,
                        () -> Bench.REASONER.whatIf(Bench.layout("curlew"), List.of(fault)))
                .getMessage();
    }
}
