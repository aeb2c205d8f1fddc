package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.rules.RuleIds;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** Reasons are the reasons: what they name matters, and they name it in words. */
class ExplanationsTest {
    private static final Set<String> OF_SEVERAL_POSSIBILITIES = Set.of("verdict/depends");

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            curlew  | third stripped; clutch dragging                     | 3
            curlew  | 3-4-fork bent side=front extent=badly               | 3
            curlew  | countershaft cut place=cluster-fourth; first-ring worn | 1
            curlew  | 3-4-sleeve stuck at=front                           | 1
            curlew  | 3-4-sleeve stuck at=front                           | 3
            curlew  | 3-4-fork broken at=neutral; interlock-pin missing   | 4
            curlew  | 3-4-hub stripped; 5-R-detent weak                   | 3
            plover  | left-half-shaft broken; third stripped              | 4
            plover  | 1-2-hub stripped; first-ring worn                   | R
            # another gear drives in its place, and yet it is lost by what broke
            curlew  | third stripped; fourth seized                       | 3
            curlew  | 3-4-hub stripped; second seized                     | 4
            curlew  | 3-4-fork broken at=rear; fourth stripped            | 4
            avocet  | cluster-driven stripped; 3-4-detent weak            | 2
            """)
    void a_loss_goes_with_the_faults_that_its_reasons_name(String layout, String faults, String gear) {
        List<Fault> all = Bench.faults(faults);
        WhatIf answer = Bench.whatIf(layout, faults);
        GearVerdict lost = Bench.gear(answer, gear);
        assertEquals(Verdict.LOST, lost.verdict());
        List<Fault> blamed = all.stream()
                .filter(fault -> names(lost.because(), Bench.REASONER.say(Bench.layout(layout), fault)))
                .toList();
        assertFalse(blamed.isEmpty(), () -> "no fault is named in " + said(lost.because()));
        assertTrue(blamed.contains(all.get(0)), () -> all.get(0).written() + " is not blamed");
        List<Fault> others = new ArrayList<>(all);
        others.removeAll(blamed);
        Verdict without = Bench.gear(Bench.REASONER.whatIf(Bench.layout(layout), others), gear)
                .verdict();
        assertTrue(without == Verdict.WORKS || without == Verdict.WORKS_WITH_NOTICE, without.word());
    }

    @Test
    void only_what_takes_the_gear_is_blamed_for_its_loss() {
        GearVerdict third = Bench.gear(Bench.whatIf("curlew", "third stripped; first stripped"), "3");
        assertTrue(said(third.because()).contains("third gear is stripped"));
        assertFalse(said(third.because()).contains("first gear is stripped"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"left-half-shaft broken", "right-half-shaft broken"})
    void with_a_half_shaft_broken_every_gear_is_lost_by_the_differential(String fault) {
        WhatIf answer = Bench.whatIf("plover", fault);
        answer.gears().forEach(gear -> {
            assertEquals(Verdict.LOST, gear.verdict(), gear.gear());
            assertEquals(
                    Set.of("lost/differential"),
                    gear.because().stream().map(Reason::rule).collect(Collectors.toSet()));
            String because = said(gear.because());
            assertTrue(because.contains("the differential turns, but its side gear"), because);
            assertTrue(because.contains("half-shaft is broken"), because);
        });
    }

    @Test
    void a_lost_gear_does_not_stand_still_where_another_drives_in_its_place() {
        assertEquals(List.of("moves-without-feel", "no-drive"), noticesOfThird("3-4-fork broken at=neutral"));
        assertEquals(List.of("moves-without-feel"), noticesOfThird("3-4-fork broken at=front"));
        assertEquals(List.of("will-not-move"), noticesOfThird("3-4-sleeve stuck at=front"));
    }

    private static List<String> noticesOfThird(String fault) {
        return Bench.gear(Bench.whatIf("curlew", fault), "3").notices().stream()
                .map(Notice::notice)
                .distinct()
                .toList();
    }

    @Test
    void in_doubt_each_possibility_stands_with_its_own_reasons() {
        GearVerdict third = Bench.gear(Bench.whatIf("curlew", "3-4-fork bent"), "3");
        assertEquals(Verdict.UNCERTAIN, third.verdict());
        assertEquals(4, third.possibilities().size());
        assertEquals(
                Set.of(Verdict.WORKS_WITH_NOTICE, Verdict.LOST),
                third.possibilities().stream()
                        .map(possibility -> possibility.verdict())
                        .collect(Collectors.toSet()));
        assertEquals(
                Set.of("rubs", "jumps-out", "hard-to-select", "no-drive"),
                third.notices().stream().map(Notice::notice).collect(Collectors.toSet()));
        assertTrue(third.notices().stream().noneMatch(Notice::certain));
        Reason depends = third.because().get(0);
        assertEquals("verdict/depends", depends.rule());
        assertTrue(depends.from().stream().allMatch(way -> !way.from().isEmpty()));
    }

    @Test
    void what_is_noticed_in_every_possibility_is_certain() {
        GearVerdict fourth = Bench.gear(Bench.whatIf("curlew", "3-4-fork bent side=front"), "4");
        assertEquals(
                List.of("rubs true"),
                fourth.notices().stream()
                        .map(notice -> notice.notice() + " " + notice.certain())
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet"})
    void every_reason_names_a_rule_that_is_and_no_part_by_its_id(String id) {
        Layout layout = Bench.layout(id);
        Set<String> rules = RuleIds.all();
        Set<String> ids = layout.all(Part.class)
                .filter(part -> !part.name().contains(part.id()))
                .map(Part::id)
                .filter(part -> part.contains("-"))
                .collect(Collectors.toSet());
        for (Fault fault : ToldFaults.of(layout)) {
            reasons(Bench.REASONER.whatIf(layout, List.of(fault))).forEach(reason -> {
                assertTrue(
                        reason.rule().isEmpty()
                                || rules.contains(reason.rule())
                                || OF_SEVERAL_POSSIBILITIES.contains(reason.rule()),
                        () -> "no rule " + reason.rule());
                assertTrue(
                        ids.stream().noneMatch(reason.says()::contains)
                                && !reason.says().contains("#"),
                        () -> fault.written() + ": " + reason.says());
            });
        }
    }

    private static Stream<Reason> reasons(WhatIf answer) {
        Stream<Reason> gears = answer.gears().stream()
                .flatMap(gear -> Stream.concat(
                        gear.because().stream(), gear.notices().stream().map(Notice::because)));
        Stream<Reason> conflicts = answer.conflicts().stream().flatMap(conflict -> conflict.because().stream());
        List<Reason> all = Stream.of(gears, conflicts, answer.neutral().because().stream())
                .flatMap(reasons -> reasons)
                .toList();
        return Bench.unfolded(all);
    }

    private static boolean names(List<Reason> because, String words) {
        return Bench.unfolded(because).anyMatch(reason -> reason.says().equals(words));
    }

    private static String said(List<Reason> because) {
        return Bench.unfolded(because).map(Reason::says).collect(Collectors.joining("; "));
    }
}
