package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.WhatIf;

/** What keeps two gears from being engaged at once, and which can meet where it is gone. */
class InterlockTest {
    private static final Set<String> BOTTOM_WITH_MIDDLE = Set.of("1+3", "1+4", "2+3", "2+4");
    private static final Set<String> BOTTOM_WITH_TOP = Set.of("1+5", "1+R", "2+5", "2+R");
    private static final Set<String> MIDDLE_WITH_TOP = Set.of("3+5", "3+R", "4+5", "4+R");

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1+3, 1+4, 2+3, 2+4 | interlock-plunger-1
            3+5, 3+R, 4+5, 4+R | interlock-plunger-2
            1+5, 1+R, 2+5, 2+R | interlock-plunger-1, interlock-plunger-2, interlock-pin
            """)
    void every_piece_that_lies_between_two_rails_keeps_them_apart(String pairs, String pieces) {
        WhatIf sound = sound("curlew");
        for (String pair : pairs.split(", ")) {
            Conflict conflict = conflict(sound, pair);
            assertEquals(Set.of(pieces.split(", ")), Set.copyOf(conflict.preventedBy()), pair);
            assertFalse(conflict.canMeet(), pair);
            assertEquals(Outcome.LOCKED, conflict.outcome(), pair);
        }
    }

    @Test
    void every_pair_on_different_rails_is_told_once() {
        assertEquals(
                union(BOTTOM_WITH_MIDDLE, union(BOTTOM_WITH_TOP, MIDDLE_WITH_TOP)),
                new TreeSet<>(pairs(sound("curlew").conflicts())));
        assertEquals(12, sound("curlew").conflicts().size());
        // reverse and fifth share a rail of Plover; first and second one of Avocet
        assertEquals(12, sound("plover").conflicts().size());
        assertEquals(8, sound("avocet").conflicts().size());
    }

    @Test
    void without_the_pin_first_and_second_can_meet_fifth_and_reverse_and_lock() {
        mayMeetAndLock("curlew", "interlock-pin missing", BOTTOM_WITH_TOP);
    }

    @Test
    void without_a_plunger_the_rails_on_either_side_of_it_can_meet_and_lock() {
        mayMeetAndLock("curlew", "interlock-plunger-1 missing", union(BOTTOM_WITH_MIDDLE, BOTTOM_WITH_TOP));
        mayMeetAndLock("curlew", "interlock-plunger-2 missing", union(MIDDLE_WITH_TOP, BOTTOM_WITH_TOP));
    }

    @Test
    void without_interlock_or_plate_all_pairs_across_rails_can_meet_and_lock() {
        Set<String> all = union(BOTTOM_WITH_MIDDLE, union(BOTTOM_WITH_TOP, MIDDLE_WITH_TOP));
        mayMeetAndLock("curlew", "interlock missing", all);
        mayMeetAndLock("plover", "interlock missing", all);
        mayMeetAndLock("plover", "interlock-plate missing", all);
    }

    @Test
    void reverse_of_avocet_runs_over_the_sleeve_of_first() {
        assertEquals(
                Set.of("R+1", "R+2", "R+3", "R+4", "1+3", "1+4", "2+3", "2+4"),
                Set.copyOf(pairs(sound("avocet").conflicts())));
        mayMeetAndLock("avocet", "interlock-pin missing", Set.of("R+3", "R+4"));
    }

    @Test
    void a_stuck_sleeve_still_holds_the_rails_and_a_broken_fork_does_not() {
        assertEquals(Set.of(), Set.copyOf(pairs(meeting(Bench.whatIf("curlew", "3-4-sleeve stuck at=front")))));
        mayMeetAndLock("curlew", "3-4-fork broken at=front", Set.of("1+4", "2+4", "4+5", "4+R"));
        assertEquals(Set.of(), Set.copyOf(pairs(meeting(Bench.whatIf("curlew", "3-4-fork broken at=neutral")))));
    }

    @Test
    void what_can_meet_in_one_possibility_can_meet() {
        assertEquals(
                Set.of("1+3", "2+3", "3+5", "3+R", "1+4", "2+4", "4+5", "4+R"),
                Set.copyOf(pairs(meeting(Bench.whatIf("curlew", "3-4-fork broken")))));
    }

    @Test
    void what_cannot_be_engaged_cannot_meet() {
        assertEquals(
                union(Set.of("1+4", "2+4", "1+5", "2+5", "1+R", "2+R"), Set.of("4+5", "4+R")),
                new TreeSet<>(pairs(
                        meeting(Bench.whatIf("curlew", "interlock missing; 3-4-fork bent side=front extent=badly")))));
    }

    @Test
    void two_gears_that_meet_without_locking_are_told_as_they_are() {
        WhatIf answer = Bench.whatIf("curlew", "interlock missing; first stripped");
        assertTrue(conflict(answer, "1+3").canMeet());
        assertEquals(Outcome.DRIVES, conflict(answer, "1+3").outcome());
        assertEquals(Outcome.LOCKED, conflict(answer, "2+3").outcome());
    }

    @Test
    void the_reasons_name_what_is_missing_and_what_would_turn_at_two_speeds() {
        Conflict meets = conflict(Bench.whatIf("curlew", "interlock-pin missing"), "1+5");
        String said = Bench.unfolded(meets.because()).map(Reason::says).collect(Collectors.joining("; "));
        assertTrue(said.contains("nothing keeps 1st and 5th from being engaged at once"), said);
        assertTrue(said.contains("would have to turn both"), said);
        assertTrue(said.contains("interlock pin through the 3-4 rail"), said);
    }

    private static void mayMeetAndLock(String layout, String fault, Set<String> expected) {
        List<Conflict> meeting = meeting(Bench.whatIf(layout, fault));
        assertEquals(new TreeSet<>(expected), new TreeSet<>(pairs(meeting)), fault);
        meeting.forEach(conflict -> {
            assertEquals(Outcome.LOCKED, conflict.outcome(), conflict.gears().toString());
            assertEquals(List.of(), conflict.preventedBy(), conflict.gears().toString());
            assertFalse(conflict.because().isEmpty(), conflict.gears().toString());
        });
    }

    private static WhatIf sound(String layout) {
        return Bench.REASONER.whatIf(Bench.layout(layout), List.of());
    }

    private static List<Conflict> meeting(WhatIf answer) {
        return answer.conflicts().stream().filter(Conflict::canMeet).toList();
    }

    private static List<String> pairs(List<Conflict> conflicts) {
        return conflicts.stream()
                .map(conflict -> String.join("+", conflict.gears()))
                .toList();
    }

    private static Conflict conflict(WhatIf answer, String pair) {
        return answer.conflicts().stream()
                .filter(conflict -> String.join("+", conflict.gears()).equals(pair))
                .findFirst()
                .orElseThrow();
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        return Stream.concat(one.stream(), other.stream()).collect(Collectors.toCollection(TreeSet::new));
    }
}
