package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspects;
import org.layshaft.kb.failure.Situation;

/** What no table states, and follows from how things turn and what they carry. */
class ConsequencesTest {

    @Test
    void needles_are_quiet_in_their_own_gear() {
        Suspects suspects = Desk.suspects("curlew", "pulling 1, 2, 4: growls; pulling 3: not noise");
        assertTrue(fits(suspects, "third-needles worn"));
        assertFalse(fits(suspects, "fourth-needles worn"));
    }

    @Test
    void countershaft_bearings_are_quiet_in_direct_drive() {
        Suspects suspects = Desk.suspects("curlew", "pulling 1, 2, 3, 4: growls; pulling 5: not noise");
        assertTrue(fits(suspects, "countershaft-front-bearing worn"));
        assertFalse(fits(suspects, "output-bearing worn"));
    }

    @Test
    void one_bad_flank_is_silent_in_reverse() {
        Suspects suspects = Desk.suspects("lapwing", "pulling 1, 2, 3: whines; pulling R: not noise");
        assertTrue(fits(suspects, "final-drive-pinion drive-flank-worn"));
        assertFalse(fits(suspects, "final-drive-pinion worn"));
    }

    @Test
    void speed_reading_tells_a_broken_half_shaft_from_a_stripped_final_drive() {
        Suspects reads = Desk.suspects("lapwing", "selected 1, R: no-drive; selected 1: reads-speed-standing");
        assertTrue(fits(reads, "left-half-shaft broken"));
        assertFalse(fits(reads, "final-drive-pinion stripped"));
        Suspects dead = Desk.suspects("lapwing", "selected 1, R: no-drive; selected 1: not reads-speed-standing");
        assertFalse(fits(dead, "left-half-shaft broken"));
        assertTrue(fits(dead, "final-drive-pinion stripped"));
    }

    @Test
    void neutral_tells_a_seized_gear_from_a_missing_interlock() {
        Suspects locks = Desk.suspects("curlew", "selected 2: locks-up");
        assertTrue(fits(locks, "third seized"));
        assertTrue(fits(locks, "interlock missing"));
        NextTest neutral = locks.tests().stream()
                .filter(test -> test.situation().equals(Optional.of(Situation.NEUTRAL_PEDAL_UP)))
                .findFirst()
                .orElseThrow();
        assertTrue(neutral.bits() > 0);
        Suspects drives = Desk.suspects("curlew", "selected 2: locks-up; neutral-pedal-up: drives-in-neutral");
        assertTrue(fits(drives, "third seized"));
        assertFalse(fits(drives, "interlock missing"));
        Suspects stands = Desk.suspects("curlew", "selected 2: locks-up; neutral-pedal-up: not drives-in-neutral");
        assertFalse(fits(stands, "third seized"));
        assertTrue(fits(stands, "interlock missing"));
    }

    /** Whether it explains everything; each that does is listed. */
    private static boolean fits(Suspects suspects, String fault) {
        return suspects.singles().stream()
                .anyMatch(suspect -> suspect.fits() && says(suspect).equals(List.of(fault)));
    }

    private static List<String> says(Suspect suspect) {
        return suspect.faults().stream()
                .map(fault -> fault.part() + " " + fault.mode())
                .toList();
    }
}
