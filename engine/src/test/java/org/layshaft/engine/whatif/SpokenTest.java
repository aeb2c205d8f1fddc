package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Spoken;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** What a technician could read out: short, in plain words, from what broke to what comes of it. */
class SpokenTest {
    private static final Pattern RULE = Pattern.compile("\\b(notice|motion|lost|verdict|rails|drive|ties|sets)/");
    private static final Pattern FRACTION = Pattern.compile("[0-9]+/[0-9]+");
    private static final int MOST = 5;

    /** One fault in so many is asked about. */
    private static final int ONE_IN = 7;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            curlew | 3-4-fork bent side=front extent=badly | 3 | The 3-4 fork is bent badly toward the front (4th). The 3-4 sleeve does not reach far enough to the rear to engage, and 3rd takes the 3-4 sleeve moved to the rear, so 3rd is lost.
            curlew | third seized                          | 1 | Third gear is seized. Third gear no longer turns on the output shaft but with it, so first gear would have to turn at two speeds at once, and nothing can turn. So the box locks with 1st selected.
            curlew | countershaft cut place=cluster-driven | 2 | The countershaft is cut between the cluster driven gear and the cluster reverse gear. The countershaft is in two pieces, and 2nd takes its drive through that stretch of the countershaft, so 2nd is lost.
            plover | left-half-shaft broken                | 2 | The left half-shaft is broken. The left half-shaft and the left wheel no longer turn each other, and the differential shares its turning between the left half-shaft and the right half-shaft, so the differential turns, but its side gear at the left half-shaft spins without load, and a differential never gives one wheel more torque than the other: neither wheel is driven. So 2nd is lost.
            curlew | 3-4-sleeve stuck at=front             | 1 | The 3-4 sleeve is stuck to the front (4th). The 3-4 sleeve cannot be moved from where it stands to the front, and the 3-4 fork sits on the 3-4 rail and moves the 3-4 sleeve, so the 3-4 rail cannot leave its front place. While the 3-4 rail is out of neutral, the 1-2 rail is held, and the other way about, and the lever pushes the 1-2 rail to the rear for 1st, so the 1-2 rail cannot be moved to select 1st. 1st is engaged by moving the 1-2 sleeve to the rear, so with 1st selected the output still turns. 1st takes the 1-2 sleeve moved to the rear, so 1st is lost.
            """)
    void a_verdict_is_told_from_what_broke_to_what_comes_of_it(
            String layout, String faults, String gear, String spoken) {
        assertEquals(spoken, String.join(" ", Spoken.of(Bench.gear(Bench.whatIf(layout, faults), gear))));
    }

    @Test
    void something_noticed_is_told_with_how_things_turn_then() {
        Notice growl = Bench.gear(Bench.whatIf("curlew", "third-needles worn"), "1").notices().stream()
                .filter(notice -> notice.condition().equals("pulling"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "The third needle bearing is worn. Pulling in 1st, third gear turns on the third needle bearing, "
                        + "and the output shaft and third gear turn unlike, so it growls.",
                String.join(" ", Spoken.of(growl)));
    }

    @Test
    void what_is_not_known_is_told_as_a_choice() {
        List<String> spoken = Spoken.of(Bench.gear(Bench.whatIf("curlew", "3-4-fork bent extent=badly"), "3"));
        assertEquals(
                List.of(
                        "What becomes of 3rd depends on what is not known of the fault.",
                        "If the 3-4 fork is bent badly toward the front (4th), it is lost.",
                        "If the 3-4 fork is bent badly toward the rear (3rd), it works, with something noticed."),
                spoken);
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet", "turnstone", "greenshank", "sanderling"})
    void every_account_is_short_and_plain(String id) {
        Layout layout = Bench.layout(id);
        Set<String> ids = layout.all(Part.class)
                .filter(part -> !part.name().contains(part.id()) && part.id().contains("-"))
                .map(Part::id)
                .collect(Collectors.toSet());
        List<Fault> faults = ToldFaults.of(layout);
        for (int number = 0; number < faults.size(); number += ONE_IN) {
            Fault fault = faults.get(number);
            WhatIf answer = Bench.REASONER.whatIf(layout, List.of(fault));
            for (GearVerdict gear : answer.gears()) {
                List<String> spoken = Spoken.of(gear);
                assertTrue(!spoken.isEmpty(), () -> fault.written() + ", " + gear.gear());
                requirePlain(spoken, ids, fault.written() + ", " + gear.gear());
                requireNamed(layout, fault, gear, spoken);
                gear.notices().forEach(notice -> requirePlain(Spoken.of(notice), ids, fault.written()));
            }
            requirePlain(Spoken.of(answer.neutral()), ids, fault.written() + ", neutral");
        }
    }

    private static void requirePlain(List<String> spoken, Set<String> ids, String where) {
        assertTrue(spoken.size() <= MOST, () -> where + ": " + spoken);
        assertEquals(List.copyOf(Set.copyOf(spoken)).size(), spoken.size(), () -> where + ": " + spoken);
        for (String sentence : spoken) {
            assertTrue(sentence.matches("(?s)[A-Z0-9].*[a-z)]\\."), () -> where + ": " + sentence);
            assertTrue(!RULE.matcher(sentence).find() && !sentence.contains("#"), () -> where + ": " + sentence);
            assertTrue(!FRACTION.matcher(sentence).find(), () -> where + ": " + sentence);
            assertTrue(ids.stream().noneMatch(sentence::contains), () -> where + ": " + sentence);
        }
    }

    /** What takes a gear, or is noticed in it, is named first. */
    private static void requireNamed(Layout layout, Fault fault, GearVerdict gear, List<String> spoken) {
        if (gear.verdict() != Verdict.WORKS) {
            String words = Bench.REASONER.say(layout, fault);
            assertEquals(words.substring(1) + ".", spoken.get(0).substring(1), gear.gear());
        }
    }
}
