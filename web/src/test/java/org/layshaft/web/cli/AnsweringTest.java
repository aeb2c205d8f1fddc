package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnsweringTest {
    @Test
    void gearsSetsOutVerdictRatioSignsReasonsAndCautions() {
        Ran ran = Ran.with("gears", "curlew", "--fault", "3-4-fork bent side=rear extent=badly");

        assertEquals(0, ran.status(), ran::err);
        assertEquals("", ran.err());
        List<String> lines = ran.out().lines().map(String::strip).toList();
        assertTrue(lines.stream().anyMatch(line -> line.matches("2 +forward +2021/672 +3\\.007 +works")), ran::out);
        assertTrue(lines.stream().anyMatch(line -> line.matches("4 +forward +1363/1008 +1\\.352 +lost .*")), ran::out);
        assertTrue(lines.contains("Why 4: lost"), ran::out);
        assertTrue(ran.out().contains("- the 3-4 fork is bent badly toward the rear"), ran::out);
        assertTrue(lines.contains("Before anybody works on it:"), ran::out);
    }

    @Test
    void whatDependsIsSetOutCaseByCase() {
        Ran ran = Ran.with("gears", "curlew", "--fault", "3-4-fork bent");

        assertTrue(ran.out().contains("If the 3-4 fork is bent badly toward the front (4th): lost"), ran::out);
        assertTrue(ran.out().contains("Why 3: may work or may not"), ran::out);
        assertFalse(ran.out().contains("Why 1:"), ran::out);
    }

    @Test
    void aSoundBoxHasNothingToMind() {
        Ran ran = Ran.with("gears", "avocet");

        assertEquals(0, ran.status(), ran::err);
        assertFalse(ran.out().contains("Before anybody"), ran::out);
    }

    @Test
    void interlocksAreSaidInGroups() {
        Ran ran = Ran.with("gears", "curlew");

        assertTrue(ran.out().contains("- 1 and 3, 1 and 4, 2 and 3, 2 and 4, by the interlock plunger"), ran::out);
        Ran without = Ran.with("gears", "curlew", "--fault", "interlock missing");
        assertTrue(without.out().contains("Two gears that can be engaged at once:"), without::out);
    }

    @Test
    void askShowsHowItUnderstood() {
        Ran ran = Ran.with("ask", "--layout", "curlew", "what", "turns", "in", "neutral");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().startsWith("Understood as: "), ran::out);
        assertTrue(ran.out().contains("turns for one of the input"), ran::out);
    }

    @Test
    void askTakesFaultsBesides() {
        Ran ran = Ran.with("ask", "--layout", "curlew", "--fault", "first stripped", "which gears still work");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().contains("Why 1: lost"), ran::out);
    }

    @Test
    void layoutsAreListed() {
        Ran ran = Ran.with("layouts");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(
                ran.out().lines().anyMatch(line -> line.matches(" +curlew +Curlew +saltmarsh +Inline .*")), ran::out);
    }

    @Test
    void wordsNameFailuresPartsSignsAndConditions() {
        String words = Ran.with("words").out();

        assertTrue(words.lines().anyMatch(line -> line.matches(" +fork +bent .*side=front\\|rear.*")), words);
        assertTrue(words.lines().anyMatch(line -> line.matches(" +3-4-fork +3-4 fork")), words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"layouts", "words", "gears curlew", "check"})
    void everyCommandHasJson(String command) throws JsonProcessingException {
        String[] args = (command + " --json").split(" ");
        if (command.equals("check")) {
            args = new String[] {"check", "--json", "../fixtures/src/main/resources/layshaft-pack"};
        }
        Ran ran = Ran.with(args);

        assertEquals(0, ran.status(), ran::err);
        JsonNode json = new ObjectMapper().readTree(ran.out());
        assertTrue(json.isObject(), ran::out);
        assertTrue(ran.out().endsWith("}\n"), ran::out);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "serve --help",
                "layouts --help",
                "check --help",
                "gears --help",
                "ask --help",
                "words --help"
            })
    void helpHasAnExample(String command) {
        Ran ran = Ran.with(command.split(" "));

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().matches("(?s).*Examples?:\\R  layshaft .*"), ran::out);
    }

    @Test
    void theVersionIsSaid() {
        assertTrue(Ran.with("--version").out().startsWith("Layshaft "));
    }
}
