package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.kb.words.Phrase;

/** The examples that packs give of each kind of question. */
class ExamplesTest {

    static Stream<String[]> examples() {
        return Saltmarsh.KNOWLEDGE.words().phrases().stream()
                .filter(phrase -> Intent.of(phrase.intent()).isPresent())
                .flatMap(phrase -> phrase.examples().stream()
                        .map(example -> new String[] {phrase.intent(), phrase.name(), example}));
    }

    static Stream<String[]> declined() {
        return Saltmarsh.KNOWLEDGE.words().phrases().stream()
                .filter(phrase -> phrase.intent().equals("declined"))
                .flatMap(phrase -> phrase.examples().stream().map(example -> new String[] {phrase.name(), example}));
    }

    static List<Phrase> questions() {
        return Saltmarsh.KNOWLEDGE.words().phrases().stream()
                .filter(phrase -> Intent.of(phrase.intent())
                        .filter(intent -> !intent.isAtLarge())
                        .isPresent())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void isUnderstoodAsItsKindAndAgainInOurWords(String intent, String name, String example) {
        Understanding.Understood understood =
                assertInstanceOf(Understanding.Understood.class, Saltmarsh.understood("curlew", example));
        assertEquals(intent, Intent.of(understood.reading().question()).word());
        assertTrue(Meant.by(understood).contains(name), Meant.by(understood));
        Understanding.Understood again = assertInstanceOf(
                Understanding.Understood.class,
                Saltmarsh.ASKING.understand(
                        Optional.empty(), understood.reading().says()));
        assertEquals(understood.reading().question(), again.reading().question());
    }

    @ParameterizedTest
    @MethodSource("declined")
    void isDeclinedForItsReason(String reason, String example) {
        Understanding.Declined declined =
                assertInstanceOf(Understanding.Declined.class, Saltmarsh.understood("curlew", example));
        assertEquals(reason, declined.reason());
        assertFalse(declined.says().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyKindHasManyPatternsAndExamples(Phrase phrase) {
        assertTrue(phrase.patterns().size() >= 12, () -> phrase.patterns().size() + " patterns");
        assertTrue(phrase.examples().size() >= 15, () -> phrase.examples().size() + " examples");
    }

    @Test
    void everyKindIsThereAndEveryExampleHasItsMeaningWrittenDown() {
        assertEquals(
                Arrays.stream(Intent.values()).map(Intent::word).collect(Collectors.toSet()),
                Saltmarsh.KNOWLEDGE.words().phrases().stream()
                        .filter(phrase -> Intent.of(phrase.intent()).isPresent())
                        .map(Phrase::intent)
                        .collect(Collectors.toSet()));
        Set<String> written = PhrasingTest.read("examples.json")
                .map(PhrasingTest.Phrasing::words)
                .collect(Collectors.toSet());
        assertEquals(
                written,
                questions().stream()
                        .flatMap(phrase -> phrase.examples().stream())
                        .collect(Collectors.toSet()));
    }
}
