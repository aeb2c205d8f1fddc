package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
                .flatMap(phrase -> phrase.examples().stream().map(example -> new String[] {phrase.intent(), example}));
    }

    static List<Phrase> questions() {
        return Saltmarsh.KNOWLEDGE.words().phrases().stream()
                .filter(phrase -> Intent.of(phrase.intent()).isPresent())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void isUnderstoodAsItsKindAndAgainInOurWords(String intent, String example) {
        Understanding.Understood understood =
                assertInstanceOf(Understanding.Understood.class, Saltmarsh.understood("curlew", example));
        assertEquals(intent, Intent.of(understood.reading().question()).word());
        Understanding.Understood again = assertInstanceOf(
                Understanding.Understood.class,
                Saltmarsh.ASKING.understand(
                        Optional.empty(), understood.reading().says()));
        assertEquals(understood.reading().question(), again.reading().question());
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
                questions().stream().map(Phrase::intent).collect(Collectors.toSet()));
        Set<String> written = PhrasingTest.read("examples.json")
                .map(PhrasingTest.Phrasing::words)
                .collect(Collectors.toSet());
        assertEquals(written, examples().map(each -> each[1]).collect(Collectors.toSet()));
    }
}
