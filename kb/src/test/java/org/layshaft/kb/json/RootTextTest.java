package org.layshaft.kb.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RootTextTest {
    @Test
    void only_the_outermost_text_is_changed_and_comments_stay() {
        String typed = """
                // "id": "not-this"
                {
                  "shafts": { "id": "nor-this" }, /* a comment */
                  "id" : "cur\\u006cew",  // the name
                  "name": "Curlew",
                }
                """;
        assertEquals(typed.replace("\"cur\\u006cew\"", "\"own\""), RootText.with(typed, "id", "own"));
    }

    @Test
    void what_is_put_in_is_quoted() {
        assertEquals("{\"id\": \"a\\\"b\"}", RootText.with("{\"id\": \"\"}", "id", "a\"b"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{", "{\"id\": 3}", "{\"name\": \"x\"}", "{\"id\" \"x\"}", "\"id\""})
    void where_there_is_no_such_text_all_stays(String typed) {
        assertEquals(typed, RootText.with(typed, "id", "own"));
    }
}
