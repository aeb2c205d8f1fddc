package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code faults} and {@code suspects}. */
class DiagnosisCommandsTest {
    @Test
    void withoutAFaultEverythingThatCanFailIsListedAsItIsWritten() {
        Ran ran = Ran.with("faults", "curlew");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().contains("3-4-fork bent [side=front|rear] [extent=slightly|badly]"), ran::out);
        assertTrue(ran.out().contains("third-needles worn"), ran::out);
    }

    @Test
    void theTableTellsWhatIsCertainAndWhatOnlyMayBe() {
        Ran ran = Ran.with("faults", "curlew", "third-needles worn");

        assertTrue(ran.out().contains("1st, 2nd, 4th, 5th and reverse  works, with something noticed"), ran::out);
        assertTrue(ran.out().contains("3rd                             works"), ran::out);
        assertTrue(ran.out().matches("(?s).*\n +pulling +1st, 2nd, 4th, 5th and reverse +it growls\n.*"), ran::out);
        assertTrue(ran.out().contains("~ it may"), ran::out);
    }

    @Test
    void aDiagnosisIsSavedAndCarriedOn(@TempDir Path folder) {
        String file = folder.resolve("second.json").toString();
        Ran first = Ran.with("suspects", "curlew", "grinds going into 2nd", "--save", file);
        assertEquals(0, first.status(), first::err);

        Ran again =
                Ran.with("suspects", "curlew", "--from", file, "shifting-into 3: not grinds-going-in", "--after-work");
        assertTrue(again.out().contains("shifting into 2nd: it grinds going in"), again::out);
        assertTrue(again.out().contains("shifting into 3rd: no sign that it grinds going in"), again::out);
        assertTrue(again.out().contains("It began after earlier work."), again::out);

        Ran other = Ran.with("suspects", "plover", "--from", file);
        assertEquals(2, other.status());
        assertTrue(other.err().contains("is a diagnosis of \"curlew\""), other::err);
        assertEquals(
                2, Ran.with("suspects", "curlew", "--from", folder.toString()).status());
    }

    @Test
    void whatCannotBeReadIsRefusedKindly() {
        Ran ran = Ran.with("suspects", "curlew", "pulling 3: growks", "pulling 9: growls");

        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("Perhaps 'growls' is meant."), ran::err);
        assertTrue(ran.err().contains("no gear '9'"), ran::err);
    }
}
