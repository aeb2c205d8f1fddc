package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people tell of what they notice, and the observations that it comes to. */
class SymptomsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            growls in neutral, not with the pedal down, quiet in 4th | neutral-pedal-up: growls; neutral-pedal-down: not growls; 4: not noise
            noisy in neutral, quiet with the pedal down, quiet in fourth | neutral-pedal-up: noise; neutral-pedal-down: not noise; 4: not noise
            jumps out of third under load, not fourth | pulling 3: jumps-out; pulling 4: not jumps-out
            whines in 1st, 2nd and reverse on the overrun | overrun 1, 2, R: whines
            it's grinding going into second when cold | cold shifting-into 2: grinds-going-in
            there is no drive in 5th after a rebuild | 5: no-drive; after-work
            growls pulling and on the overrun in 3rd but fine in 4th | pulling 3: growls; overrun 3: growls; pulling 4: not growls; overrun 4: not growls
            does not jump out of 2nd | 2: not jumps-out
            vibrates in top gear | 5: vibrates
            growls in all gears except 4th           | 1, 2, 3, 5, R: growls; 4: not growls
            growls in every gear, apart from fourth and fifth | 1, 2, 3, R: growls; 4, 5: not growls
            growls except in third | growls; 3: not growls
            growls in third with the pedal down | in-gear-pedal-down 3: growls
            """)
    void wordsComeToObservations(String words, String written) {
        SymptomsHeard heard = heard(words);

        assertEquals(List.of(), heard.unknown());
        assertEquals(written, heard.evidence().written());
    }

    @Test
    void wordsThatNothingIsKnownOfAreTold() {
        SymptomsHeard heard = heard("growls in third like a hedgehog");

        assertEquals(List.of("like", "hedgehog"), heard.unknown());
        assertFalse(heard.isWhole());
        assertEquals("3: growls", heard.evidence().written());
        assertTrue(heard("fish and chips").isNothing());
    }

    /** "Locks up" is noticed too; but this asks what two gears would do. */
    @Test
    void aQuestionAboutTheSoundBoxStaysOne() {
        assertEquals(
                "two-at-once [] 2 4",
                Meant.by(Saltmarsh.understood("curlew", "will the box lock up with 2nd and 4th both engaged")));
    }

    @Test
    void theAnswerNamesSuspectsAndWhatToTry() {
        String says = Saltmarsh.answered("curlew", "grinds going into 2nd, fine in third");

        assertTrue(says.contains("The second blocking ring is worn."), says);
        assertTrue(says.contains("To try next:"), says);
    }

    private static SymptomsHeard heard(String words) {
        return Saltmarsh.ASKING.understandSymptoms(Saltmarsh.layout("curlew"), words);
    }
}
