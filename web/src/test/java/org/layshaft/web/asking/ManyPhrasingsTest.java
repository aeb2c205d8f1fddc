package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * How many of many phrasings are understood as they were meant. All were written down before anything was made to understand
 * them; those kept apart were not looked at while it was made.
 */
class ManyPhrasingsTest {
    /** A question, what it means, and the question before it, if it follows one. */
    private record Phrasing(String words, Optional<String> after, String layout, String means) {
        String meant() {
            return Meant.by(Saltmarsh.ASKING.understand(Optional.of(layout), words, after));
        }
    }

    @Test
    void nearlyAllOfTheOpenOnesAreUnderstood() {
        assertTrue(rate("phrasings-wide.json") >= 0.97);
    }

    @Test
    void mostOfThoseKeptApartAreUnderstood() {
        assertTrue(rate("phrasings-kept-apart.json") >= 0.5);
    }

    private static double rate(String file) {
        List<Phrasing> all = read(file);
        List<Phrasing> otherwise =
                all.stream().filter(each -> !each.meant().equals(each.means())).toList();
        System.out.printf("%s: %d of %d understood as meant%n", file, all.size() - otherwise.size(), all.size());
        return 1 - (double) otherwise.size() / all.size();
    }

    private static List<Phrasing> read(String file) {
        try (InputStream in = ManyPhrasingsTest.class.getResourceAsStream(file)) {
            JsonNode all = new ObjectMapper().readTree(in);
            return StreamSupport.stream(all.spliterator(), false)
                    .map(each -> new Phrasing(
                            each.path("words").asText(),
                            Optional.ofNullable(each.path("after").asText(null)),
                            each.path("layout").asText(),
                            each.path("means").asText()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
