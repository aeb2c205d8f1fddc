package org.layshaft.kb.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Holds files against the published schemas. Thread-safe. */
public final class Schemas {
    private static final String FOLDER = "/org/layshaft/kb/schema/";
    private static final Map<String, Published> PUBLISHED = new ConcurrentHashMap<>();

    private Schemas() {}

    private record Published(JsonNode text, Schema schema) {}

    /** The text of a published schema, by the name of its kind of file: {@code layout}. */
    public static JsonNode text(String kind) {
        return published(kind).text();
    }

    /** Tells everything in which the file differs from the schema. */
    public static void check(String kind, Document document, Report report) {
        Published published = published(kind);
        List<Error> errors = published.schema().validate(document.root());
        SchemaSentences sentences = new SchemaSentences(published.text(), document, report);
        errors.forEach(sentences::tell);
    }

    private static Published published(String kind) {
        return PUBLISHED.computeIfAbsent(kind, Schemas::load);
    }

    private static Published load(String kind) {
        String resource = FOLDER + kind + ".schema.json";
        try (InputStream in = Schemas.class.getResourceAsStream(resource)) {
            JsonNode text = new ObjectMapper().readTree(in);
            SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
            return new Published(text, registry.getSchema(text));
        } catch (IOException missing) {
            throw new IllegalStateException("the schema %s cannot be read".formatted(resource), missing);
        }
    }
}
