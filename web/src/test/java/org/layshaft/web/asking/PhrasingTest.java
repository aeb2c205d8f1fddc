package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Questions as people put them, with what each means. Those of {@code examples.json} are the examples of the packs, asked
 * of Curlew; the others were written down before
 * anything was made, or changed, to understand them.
 */
class PhrasingTest {

    /**
     * A question and what it means.
     *
     * @param layout the one given; null for none
     * @param means as {@link Meant} says it
     * @param in the layout it names; null for the one given
     */
    record Phrasing(String words, String layout, String means, String in) {}

    static Stream<Phrasing> phrasings() {
        return Stream.of("phrasings.json", "phrasings-later.json", "examples.json")
                .flatMap(PhrasingTest::read);
    }

    static Stream<Phrasing> read(String file) {
        try (InputStream in = PhrasingTest.class.getResourceAsStream(file)) {
            JsonNode all = new ObjectMapper().readTree(in);
            return StreamSupport.stream(all.spliterator(), false)
                    .map(each -> new Phrasing(
                            each.path("words").asText(),
                            each.path("layout").asText(null),
                            each.path("means").asText(),
                            each.path("in").asText(null)))
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("phrasings")
    void meansWhatItShould(Phrasing phrasing) {
        Understanding understanding = Saltmarsh.understood(phrasing.layout(), phrasing.words());
        assertEquals(phrasing.means(), Meant.by(understanding));
        if (phrasing.in() != null) {
            assertEquals(
                    phrasing.in(),
                    ((Understanding.Understood) understanding)
                            .reading()
                            .question()
                            .layout());
        }
    }
}
