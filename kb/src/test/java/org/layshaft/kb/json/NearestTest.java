package org.layshaft.kb.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> IDS = List.of("first", "third", "input-gear", "cluster-third");

    @Test
    void offers_the_word_with_fewest_changed_letters() {
        assertEquals(Optional.of("third"), Nearest.to("thrid", IDS));
        assertEquals(Optional.of("input-gear"), Nearest.to("Input-geer", IDS));
    }

    @Test
    void very_long_words_are_near_to_nothing() {
        String one = "a".repeat(500_000);
        assertEquals(Optional.empty(), Nearest.to(one + "b", List.of(one)));
    }

    @Test
    void a_long_list_is_cut() {
        List<String> many =
                IntStream.range(0, 25).mapToObj(number -> "gear-" + number).toList();
        String advice = Nearest.advice("x", many);
        assertTrue(advice.endsWith("gear-18, gear-19 and 5 more."), advice);
    }

    @Test
    void offers_nothing_where_more_than_a_third_would_change() {
        assertEquals(Optional.empty(), Nearest.to("reverse", IDS));
        assertEquals("It can be: first, third, input-gear, cluster-third.", Nearest.advice("reverse", IDS));
        assertEquals("There is none that it could be.", Nearest.advice("reverse", List.of()));
    }
}
