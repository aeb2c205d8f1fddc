package org.layshaft.web.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The schemas that are handed out. */
final class SchemaFiles {
    private static final String FOLDER = "/org/layshaft/web/";

    private SchemaFiles() {}

    static String read(String name) {
        try (InputStream in = SchemaFiles.class.getResourceAsStream(FOLDER + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The schema " + name + " cannot be read.", e);
        }
    }
}
