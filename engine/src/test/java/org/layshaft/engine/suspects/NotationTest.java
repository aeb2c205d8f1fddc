package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;

/** Evidence as it is written in addresses. */
class NotationTest {

    @Test
    void evidence_is_read() {
        Evidence evidence =
                Desk.evidence("curlew", "pulling 3, 4: growls; hot neutral-pedal-down: not growls; after-work");
        assertEquals(
                new Evidence(
                        List.of(
                                new Observation(
                                        "growls",
                                        Optional.of(Situation.PULLING),
                                        List.of("3", "4"),
                                        true,
                                        Optional.empty()),
                                new Observation(
                                        "growls",
                                        Optional.of(Situation.NEUTRAL_PEDAL_DOWN),
                                        List.of(),
                                        false,
                                        Optional.of(Heat.HOT))),
                        true),
                evidence);
    }

    @Test
    void words_of_the_trade_will_do() {
        assertEquals(
                Desk.evidence("curlew", "pulling 3: jumps-out; at-rest: leaks; after-work"),
                Desk.evidence("curlew", "Under load 3rd: pops out of gear; parked: oil leak; after a rebuild"));
    }

    @Test
    void all_that_can_be_written_is_read_back() {
        Random random = new Random(4711);
        List<String> notices = List.copyOf(Desk.KNOWLEDGE.words().notices().keySet());
        List<String> gears = Desk.book("oystercatcher").dictionary().cells().gears(Situation.PULLING);
        for (int i = 0; i < 300; i++) {
            List<Observation> observations = new ArrayList<>();
            for (int j = random.nextInt(5); j >= 0; j--) {
                Optional<Situation> situation = random.nextInt(4) == 0
                        ? Optional.empty()
                        : Optional.of(Situation.values()[random.nextInt(Situation.values().length)]);
                boolean inGear = situation.map(Situation::isInGear).orElse(true);
                List<String> some = inGear ? gears.subList(0, random.nextInt(gears.size() + 1)) : List.of();
                observations.add(new Observation(
                        notices.get(random.nextInt(notices.size())),
                        situation,
                        some,
                        random.nextBoolean(),
                        random.nextInt(3) == 0 ? Optional.of(Heat.values()[random.nextInt(2)]) : Optional.empty()));
            }
            Evidence evidence = new Evidence(observations, random.nextBoolean());
            assertEquals(evidence, Desk.evidence("oystercatcher", evidence.written()), evidence.written());
        }
    }

    @Test
    void everything_that_cannot_be_read_is_told_at_once_with_the_nearest_word() {
        String said = refused("puling 3: growls; pulling 9: growls; pulling 3: growlz");
        assertEquals(3, said.split("\n").length, said);
        assertTrue(said.contains("'puling 3' is neither a situation nor a gear. Perhaps 'pulling' is meant."), said);
        assertTrue(said.contains("there is no gear '9'. There are 1, 2, 3, 4, 5, R."), said);
        assertTrue(said.contains("'growlz'. Perhaps 'growl' is meant."), said);
    }

    @Test
    void no_gear_is_engaged_in_neutral() {
        String said = refused("neutral-pedal-up 3: growls");
        assertTrue(said.contains("no gear is engaged. Leave '3' out."), said);
    }

    private static String refused(String written) {
        return assertThrows(UnanswerableException.class, () -> Desk.evidence("curlew", written))
                .getMessage();
    }
}
