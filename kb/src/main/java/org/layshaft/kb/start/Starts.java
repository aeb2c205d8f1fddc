package org.layshaft.kb.start;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The layouts to start from, read once. Thread-safe. */
public final class Starts {
    private static final List<Start> ALL = read();

    private Starts() {}

    /** In the order in which they are offered. */
    public static List<Start> all() {
        return ALL;
    }

    public static Optional<Start> of(String id) {
        return ALL.stream().filter(start -> start.id().equals(id)).findFirst();
    }

    private static List<Start> read() {
        try {
            List<Start> starts = new ArrayList<>();
            for (JsonNode family : new ObjectMapper().readTree(text("families.json"))) {
                String id = family.path("start").asText();
                starts.add(new Start(id, family.path("says").asText(), text(id + ".json")));
            }
            return List.copyOf(starts);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the layouts to start from cannot be read", unreadable);
        }
    }

    private static String text(String name) throws IOException {
        try (InputStream in = Starts.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new FileNotFoundException(name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
