package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Effort;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Suspects;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.Situation;

/** The tests that the trade splits suspects by come out of the computation: D1 to D5 as published, and what else holds. */
class NextTestsTest {

    /** D1, T2: still stiff with the engine stopped, linkage; free then, clutch or synchroniser. */
    @Test
    void lever_with_engine_stopped_splits_linkage_from_clutch_and_synchroniser() {
        Suspects suspects = Desk.suspects("heron", "shifting-into: hard-to-select");
        NextTest test = first(suspects, Situation.AT_THE_LEVER);
        assertEquals(test, suspects.tests().get(0));
        NextTest.Outcome free = outcome(test, outcome -> seen(outcome).isEmpty());
        assertTrue(left(suspects, free).contains("clutch dragging"));
        assertTrue(left(suspects, free).stream().anyMatch(fault -> fault.matches(".*-(ring|clutching-teeth) .*")));
        assertTrue(ruledOut(suspects, free).contains("linkage stiff"));
        NextTest.Outcome stiff =
                outcome(test, outcome -> left(suspects, outcome).contains("linkage stiff"));
        assertTrue(seen(stiff).contains("hard-to-select"));
        assertTrue(ruledOut(suspects, stiff).contains("clutch dragging"));
    }

    /** D2, T2: the engine runs on, a broken shaft or stripped gear; it stalls, two gears locked together. */
    @Test
    void letting_the_clutch_in_splits_a_cut_shaft_from_two_gears_locked() {
        Book book = Desk.book("curlew");
        Clues clues = Desk.clues("curlew", "");
        Sorts sorts = new Sorts(Desk.KNOWLEDGE.words());
        List<Candidate> candidates = new Ranking(false, Optional.empty())
                .ofAll(book.dictionary(), clues).stream()
                        .filter(candidate -> Set.of(
                                        "input cut", "cluster-driven stripped", "1-2-fork broken", "first seized")
                                .contains(candidate.part().id() + " "
                                        + candidate.mode().name()))
                        .toList();
        assertEquals(4, candidates.size());
        Profile.Index index = new Profile.Index(book.dictionary().cells(), sorts);
        ObservationWords words =
                new ObservationWords(new Names(Desk.layout("curlew"), Desk.KNOWLEDGE.words()), Desk.KNOWLEDGE.words());
        TestWords testWords = new TestWords(index, words);
        NextTests tests = new NextTests(
                index,
                testWords,
                new Trials(book.dictionary().cells(), clues, index, testWords, Desk.KNOWLEDGE.words()));
        NextTest selected = tests.trying(candidates).stream()
                .filter(test -> test.situation().equals(Optional.of(Situation.SELECTED)))
                .findFirst()
                .orElseThrow();
        NextTest.Outcome runsOn = outcome(selected, outcome -> seen(outcome).equals(Set.of("no-drive")));
        NextTest.Outcome stalls = outcome(selected, outcome -> seen(outcome).equals(Set.of("locks-up")));
        assertTrue(parts(candidates, runsOn.leaves()).containsAll(Set.of("input", "cluster-driven")));
        assertTrue(parts(candidates, stalls.rulesOut()).containsAll(Set.of("input", "cluster-driven")));
        assertTrue(parts(candidates, stalls.leaves()).contains("first"));
    }

    /** D3, T3: all gears clash, the clutch; one, its synchroniser. */
    @Test
    void which_gears_clash_splits_the_clutch_from_one_ring() {
        Suspects suspects = Desk.suspects("curlew", "shifting-into: grinds-going-in");
        NextTest test = first(suspects, Situation.SHIFTING_INTO);
        NextTest.Outcome one = outcome(test, outcome -> grindsIn(outcome).equals(List.of("3")));
        assertTrue(left(suspects, one).contains("third-ring worn"));
        assertTrue(ruledOut(suspects, one).contains("clutch dragging"));
        assertTrue(ruledOut(suspects, one).contains("second-ring worn"));
        Suspects all = Desk.suspects("curlew", "shifting-into 1, 2, 3, 4, 5, R: grinds-going-in");
        assertEquals("clutch", all.singles().get(0).faults().get(0).part());
    }

    /** D4, T3: one gear noisy, its pair or synchroniser; all gears and neutral, oil, shared gears, shaft bearings. */
    @Test
    void noise_against_gear_splits_one_pair_from_what_all_share() {
        Suspects suspects = Desk.suspects("lapwing", "pulling: noise");
        assertTrue(first(suspects, Situation.NEUTRAL_PEDAL_UP).bits() > 0);
        Suspects one = Desk.suspects("lapwing", "pulling 3: noise; pulling 1, 2, 4, 5, 6, R: not noise");
        assertTrue(one.singles().get(0).faults().get(0).part().contains("third"));
        Suspects all = Desk.suspects("lapwing", "pulling 1, 2, 3, 4, 5, 6, R: noise; neutral-pedal-up: noise");
        Set<String> fitting = all.singles().stream()
                .filter(suspect -> suspect.rank() <= 3)
                .map(suspect -> suspect.faults().get(0).part())
                .collect(Collectors.toSet());
        assertTrue(
                fitting.stream().noneMatch(part -> part.matches("(input-)?(first|second|third|fourth|fifth|sixth)")));
        assertTrue(
                fitting.stream().anyMatch(part -> part.matches("oil|input-(front|rear)-bearing")), fitting.toString());
    }

    /** D5, V4: noisy in every gear but direct, the pairs that carry there; what is loaded in direct too is less likely. */
    @Test
    void noise_in_all_but_direct_leaves_what_carries_by_the_countershaft() {
        Suspects suspects = Desk.suspects("whimbrel", "pulling 1, 2, 3, 5: noise");
        NextTest test = first(suspects, Situation.PULLING);
        assertTrue(test.gears().contains("4"));
        NextTest.Outcome quiet =
                outcome(test, outcome -> seenIn(outcome, "noise").stream().noneMatch("4"::equals));
        assertTrue(left(suspects, quiet).contains("cluster-driven worn"));
        assertTrue(ruledOut(suspects, quiet).contains("output-rear-bearing worn"));
    }

    @Test
    void nothing_is_proposed_that_has_been_tried() {
        Suspects suspects =
                Desk.suspects("curlew", "pulling 3: growls; neutral-pedal-up: not noise; at-rest: not leaks");
        for (NextTest test : suspects.tests()) {
            assertFalse(test.situation().equals(Optional.of(Situation.NEUTRAL_PEDAL_UP)));
            assertFalse(test.situation().equals(Optional.of(Situation.PULLING))
                    && test.gears().contains("3"));
            assertFalse(test.says().contains("leaks"), test.says());
        }
    }

    @Test
    void what_comes_of_a_test_can_be_added_to_the_evidence_and_keeps_those_it_leaves() {
        String told = "pulling 3: growls";
        Suspects suspects = Desk.suspects("curlew", told);
        NextTest test = suspects.tests().get(0);
        for (NextTest.Outcome outcome : test.outcomes()) {
            Suspects after = Desk.DIAGNOSTICIAN.suspects(
                    Desk.layout("curlew"),
                    outcome.evidence().stream()
                            .reduce(
                                    suspects.evidence(),
                                    (evidence, observation) -> evidence.with(observation),
                                    (one, other) -> other));
            assertFalse(after.singles().isEmpty());
        }
        double chances =
                test.outcomes().stream().mapToDouble(NextTest.Outcome::chance).sum();
        assertTrue(chances > 0.5 && chances < 1.000001, Double.toString(chances));
    }

    @Test
    void less_trouble_comes_before_more() {
        List<Effort> order = List.of(Effort.values());
        for (int i = 1; i < order.size(); i++) {
            assertTrue(order.get(i - 1).cost() < order.get(i).cost());
        }
        assertTrue(Effort.of(Situation.NEUTRAL_PEDAL_UP).cost()
                < Effort.of(Situation.AT_THE_LEVER).cost());
        assertTrue(Effort.of(Situation.AT_THE_LEVER).cost()
                < Effort.of(Situation.PULLING).cost());
        assertTrue(Effort.of(Situation.PULLING).cost() < Effort.of(Depth.PLUG).cost());
    }

    private static NextTest first(Suspects suspects, Situation situation) {
        return suspects.tests().stream()
                .filter(test -> test.situation().equals(Optional.of(situation)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no test " + situation.word() + " among "
                        + suspects.tests().stream().map(NextTest::says).toList()));
    }

    private static NextTest.Outcome outcome(NextTest test, Predicate<NextTest.Outcome> such) {
        return test.outcomes().stream()
                .filter(such)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no such outcome among "
                        + test.outcomes().stream().map(NextTest.Outcome::says).toList()));
    }

    private static Set<String> seen(NextTest.Outcome outcome) {
        return outcome.evidence().stream()
                .filter(observation -> observation.seen())
                .map(observation -> observation.notice())
                .collect(Collectors.toSet());
    }

    private static List<String> grindsIn(NextTest.Outcome outcome) {
        return seenIn(outcome, "grinds-going-in");
    }

    private static List<String> seenIn(NextTest.Outcome outcome, String notice) {
        return outcome.evidence().stream()
                .filter(observation ->
                        observation.seen() && observation.notice().equals(notice))
                .flatMap(observation -> observation.gears().stream())
                .toList();
    }

    private static Set<String> left(Suspects suspects, NextTest.Outcome outcome) {
        return faults(suspects, outcome.leaves());
    }

    private static Set<String> ruledOut(Suspects suspects, NextTest.Outcome outcome) {
        return faults(suspects, outcome.rulesOut());
    }

    private static Set<String> faults(Suspects suspects, List<Integer> places) {
        return places.stream()
                .map(place -> suspects.singles().get(place).faults().get(0))
                .map(fault -> fault.part() + " " + fault.mode())
                .collect(Collectors.toSet());
    }

    private static Set<String> parts(List<Candidate> candidates, List<Integer> places) {
        return places.stream().map(place -> candidates.get(place).part().id()).collect(Collectors.toSet());
    }
}
