package org.layshaft.web.board;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.kb.json.DocumentReader;

/** The id that a layout's text gives it. */
final class Ids {
    /** In a text that cannot be read as JSON: the first that looks like it. */
    private static final Pattern TYPED = Pattern.compile("\"id\"\\s*:\\s*\"([^\"\\n]*)\"");

    private Ids() {}

    static Optional<String> of(String text) {
        return DocumentReader.read("", text.getBytes(StandardCharsets.UTF_8))
                .document()
                .map(document -> document.item().get("id").text())
                .orElseGet(() -> typed(text));
    }

    private static Optional<String> typed(String text) {
        Matcher id = TYPED.matcher(text);
        return id.find() ? Optional.of(id.group(1)) : Optional.empty();
    }

    /** The id itself where it is free, else with the first number that makes it so. */
    static String free(String id, Predicate<String> taken) {
        String free = id;
        for (int number = 2; taken.test(free); number++) {
            free = id + "-" + number;
        }
        return free;
    }
}
