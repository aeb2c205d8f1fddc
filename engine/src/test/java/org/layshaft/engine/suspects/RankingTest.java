package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspects;
import org.layshaft.kb.failure.Depth;

/** What stands before what, and why. */
class RankingTest {

    @Test
    void gears_told_together_or_one_by_one_come_to_the_same() {
        Suspects together = Desk.suspects("curlew", "pulling 1, 2, 3: growls; pulling 4, 5: not noise");
        Suspects apart = Desk.suspects(
                "curlew",
                "pulling 1: growls; pulling 2: growls; pulling 3: growls; pulling 4: not noise; pulling 5: not noise");
        assertEquals(names(together), names(apart));
        assertEquals(together.singles(), apart.singles());
    }

    @Test
    void better_fits_come_first_and_ties_share_a_rank() {
        Suspects suspects =
                Desk.suspects("lapwing", "shifting-into 3: grinds-going-in; shifting-into 4: not grinds-going-in");
        List<Suspect> singles = suspects.singles();
        for (int i = 1; i < singles.size(); i++) {
            assertTrue(singles.get(i - 1).rank() <= singles.get(i).rank());
        }
        assertEquals("third-ring worn", name(singles.get(0)));
        Suspects vague = Desk.suspects("lapwing", "shifting-into: grinds-going-in");
        assertEquals(
                7,
                vague.singles().stream().filter(suspect -> suspect.rank() == 1).count(),
                "one ring for each gear");
    }

    /** Not noisy in one gear is worth as much as noisy in another. */
    @Test
    void what_is_not_there_counts_as_much_as_what_is() {
        assertEquals(0, shortfall("output-bearing worn", "pulling 3: growls; pulling 4: growls"));
        assertEquals(Weights.WHOLE, shortfall("output-bearing worn", "pulling 3: growls; pulling 4: not noise"));
        assertEquals(Weights.WHOLE, shortfall("third-needles worn", "pulling 3: growls; pulling 4: growls"));
    }

    private static int shortfall(String fault, String written) {
        return Desk.book("curlew").dictionary().entries().stream()
                .filter(entry -> (entry.part().id() + " " + entry.mode().name()).equals(fault))
                .mapToInt(entry -> Assessment.of(entry.shown(), Desk.clues("curlew", written))
                        .shortfall())
                .min()
                .orElseThrow();
    }

    @Test
    void a_general_notice_is_met_by_its_sorts_and_a_neighbouring_sort_counts_in_part() {
        Suspect noise =
                the(Desk.suspects("curlew", "pulling 3: noise"), "third worn").orElseThrow();
        assertEquals(Suspect.Degree.SURELY, noise.explains().get(0).degree());
        Suspect squeals =
                the(Desk.suspects("curlew", "pulling 3: squeals"), "third worn").orElseThrow();
        assertEquals(Suspect.Degree.IN_PART, squeals.explains().get(0).degree());
    }

    @Test
    void earlier_work_raises_what_comes_of_work() {
        String told = "pulling 3: vibrates";
        int before = place(Desk.suspects("avocet", told), "pilot-bearing left-out");
        int after = place(Desk.suspects("avocet", told + "; after-work"), "pilot-bearing left-out");
        assertTrue(after < before, "from %d to %d".formatted(before, after));
    }

    /** Every other gear is reached by one stroke of the lever. */
    @Test
    void gears_of_one_stroke_bring_outside_causes_first_among_equals_and_say_why() {
        Suspects suspects = Desk.suspects("plover", "pulling 2, 4: jumps-out; pulling 1, 3, 5: not jumps-out");
        Suspect first = suspects.singles().get(0);
        assertEquals(Depth.OUTSIDE, first.seenAt());
        assertTrue(
                first.reasons().stream()
                        .anyMatch(reason -> reason.contains("2nd and 4th share one stroke of the lever")),
                first.reasons().toString());
    }

    @Test
    void two_faults_are_supposed_only_where_no_single_one_explains_everything() {
        assertTrue(Desk.suspects("curlew", "pulling 3: growls").pairs().isEmpty());
        Suspects suspects = Desk.suspects(
                "curlew",
                "selected 1, 2: no-drive; selected 3: not no-drive; shifting-into 4: grinds-going-in; shifting-into 3: not grinds-going-in");
        assertTrue(suspects.singles().stream().noneMatch(Suspect::fits));
        Suspect pair = suspects.pairs().get(0);
        assertEquals(2, pair.faults().size());
        assertTrue(pair.fits());
        assertTrue(pair.faults().stream().anyMatch(fault -> fault.part().equals("fourth-ring")), pair.says());
        assertTrue(pair.faults().stream().anyMatch(fault -> fault.part().startsWith("1-2-")), pair.says());
    }

    @Test
    void every_suspect_has_an_account_that_names_what_it_explains_and_what_it_does_not() {
        Suspects suspects = Desk.suspects("curlew", "pulling 3: growls; at-rest: leaks");
        for (Suspect suspect : suspects.singles()) {
            assertTrue(suspect.account().contains(suspect.says()), suspect.account());
            suspect.unexplained()
                    .forEach(left -> assertTrue(
                            suspect.account().contains(Desk.DIAGNOSTICIAN.say(Desk.layout("curlew"), left)),
                            suspect.account()));
        }
    }

    private static Optional<Suspect> the(Suspects suspects, String name) {
        return suspects.singles().stream()
                .filter(suspect -> name(suspect).equals(name))
                .findFirst();
    }

    private static int place(Suspects suspects, String name) {
        int place = names(suspects).indexOf(name);
        return place < 0 ? Integer.MAX_VALUE : place;
    }

    private static List<String> names(Suspects suspects) {
        return Stream.concat(suspects.singles().stream(), suspects.pairs().stream())
                .map(RankingTest::name)
                .toList();
    }

    private static String name(Suspect suspect) {
        return String.join(
                " + ",
                suspect.faults().stream()
                        .map(fault -> fault.part() + " " + fault.mode())
                        .toList());
    }
}
