package org.layshaft.web.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;

/** Writes the records of this package. Thread-safe. */
public final class Json {
    private static final ObjectWriter WRITER = new ObjectMapper()
            .writer(new DefaultPrettyPrinter(
                            Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private Json() {}

    /** The record as JSON text, indented, with a newline at its end. */
    public static String write(Object record) {
        try {
            return WRITER.writeValueAsString(record) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("An answer could not be written as JSON: " + record.getClass(), e);
        }
    }
}
