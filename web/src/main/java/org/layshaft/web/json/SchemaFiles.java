package org.layshaft.web.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;
import org.layshaft.kb.json.Schemas;

/** The descriptions that are handed out: the schema of each answer, and the whole API in OpenAPI. */
public final class SchemaFiles {
    private static final String FOLDER = "/org/layshaft/web/";
    private static final String LAYOUT = "layout";
    private static final Pattern NAME = Pattern.compile("[a-z]+");

    private SchemaFiles() {}

    /** The JSON Schema that an answer keeps to, {@code fit}, or layouts do; empty where there is none of this name. */
    public static Optional<String> of(String answer) {
        if (answer.equals(LAYOUT)) {
            return Optional.of(Schemas.text(LAYOUT).toPrettyString());
        }
        return NAME.matcher(answer).matches() ? read(answer + ".schema.json") : Optional.empty();
    }

    /** What is answered under {@code /api}, in OpenAPI 3.1. */
    public static String openApi() {
        return read("openapi.json").orElseThrow();
    }

    private static Optional<String> read(String name) {
        try (InputStream in = SchemaFiles.class.getResourceAsStream(FOLDER + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("The description " + name + " cannot be read.", e);
        }
    }
}
