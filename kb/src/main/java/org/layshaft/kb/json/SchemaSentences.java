package org.layshaft.kb.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Puts what a schema has to say into sentences, with the schema's own descriptions as advice. */
final class SchemaSentences {
    private final JsonNode schema;
    private final Document document;
    private final Report report;

    SchemaSentences(JsonNode schema, Document document, Report report) {
        this.schema = schema;
        this.document = document;
        this.report = report;
    }

    void tell(Error error) {
        if (isOneOfSeveralWays(error)) {
            return;
        }
        String pointer = error.getInstanceLocation().toString();
        JsonNode rule = rule(error);
        switch (error.getKeyword()) {
            case "additionalProperties" -> unknownKey(pointer, error.getProperty(), rule);
            case "required" -> missingKey(pointer, error.getProperty(), way(error));
            case "propertyNames" -> badKey(pointer, error);
            case "oneOf" -> notOneKey(pointer, error.getSchemaNode());
            default -> badValue(pointer, error);
        }
    }

    /** What each way of a oneOf misses is of no use: the oneOf itself is told. */
    private static boolean isOneOfSeveralWays(Error error) {
        String path = error.getEvaluationPath().toString();
        return path.contains("/oneOf/") || path.contains("/propertyNames/");
    }

    private void unknownKey(String pointer, String key, JsonNode rule) {
        report.broken(
                Pointers.child(pointer, key),
                "There is no key '%s' here.".formatted(key),
                key,
                Nearest.advice(key, keys(rule.path("properties"))));
    }

    /** A key that only some ways of filling in an object require is described where the object is. */
    private void missingKey(String pointer, String key, List<JsonNode> way) {
        String means = innermostDescription(
                way.stream().map(rule -> rule.path("properties").path(key)).toList());
        report.broken(
                pointer,
                "%s lacks the key '%s'.".formatted(subject(pointer), key),
                "",
                means.isEmpty() ? "Add it." : "Add it: " + means);
    }

    private void badKey(String pointer, Error error) {
        String key = error.getProperty();
        report.broken(
                Pointers.child(pointer, key),
                "'%s' cannot stand as a key here.".formatted(key),
                key,
                description(resolved(error.getSchemaNode())));
    }

    private void notOneKey(String pointer, JsonNode ways) {
        if (!document.root().at(pointer).isObject()) {
            return;
        }
        String keys = StreamSupport.stream(ways.spliterator(), false)
                .map(way -> way.path("required").path(0).asText())
                .collect(Collectors.joining(", "));
        report.broken(
                pointer,
                "%s must have exactly one of the keys that say what it is.".formatted(subject(pointer)),
                document.root().at(pointer),
                "Give it one of: %s.".formatted(keys));
    }

    private void badValue(String pointer, Error error) {
        JsonNode value = document.root().at(pointer);
        String complaint = Complaint.about(error.getKeyword(), error.getSchemaNode(), value);
        report.broken(
                pointer,
                "%s %s.".formatted(subject(pointer), complaint),
                value.isTextual() ? value.textValue() : value,
                advice(error, value));
    }

    private String advice(Error error, JsonNode value) {
        if (error.getKeyword().equals("enum") && value.isTextual()) {
            List<String> words = new ArrayList<>();
            error.getSchemaNode().forEach(word -> words.add(word.asText()));
            return Nearest.advice(value.textValue(), words);
        }
        List<JsonNode> way = way(error);
        String means = innermostDescription(way.subList(1, way.size()));
        return means.isEmpty() ? description(schema) : means;
    }

    /** The part of the schema that holds the keyword which complains. */
    private JsonNode rule(Error error) {
        List<JsonNode> way = way(error);
        return way.get(way.size() - 1);
    }

    /** The parts of the schema that led to the keyword which complains, from the whole schema inward. */
    private List<JsonNode> way(Error error) {
        NodePath path = error.getEvaluationPath();
        List<JsonNode> way = new ArrayList<>(List.of(schema));
        for (int step = 0; step < path.getNameCount() - 1; step++) {
            JsonNode here = way.get(way.size() - 1);
            String name = path.getName(step);
            way.add(name.equals("$ref") ? resolved(here) : here.at(Pointers.child("", name)));
        }
        return way;
    }

    private JsonNode resolved(JsonNode rule) {
        JsonNode reference = rule.path("$ref");
        return reference.isTextual() ? schema.at(reference.textValue().substring(1)) : rule;
    }

    private String subject(String pointer) {
        if (pointer.isEmpty()) {
            return "The file";
        }
        String last = pointer.substring(pointer.lastIndexOf('/') + 1)
                .replace("~1", "/")
                .replace("~0", "~");
        String before = Pointers.parent(pointer);
        return document.root().at(before).isArray()
                ? "Item %d of '%s'".formatted(Integer.parseInt(last) + 1, before.substring(before.lastIndexOf('/') + 1))
                : "'%s'".formatted(last);
    }

    /** The last that is described; empty where none is. */
    private static String innermostDescription(List<JsonNode> way) {
        return way.stream()
                .map(SchemaSentences::description)
                .filter(text -> !text.isEmpty())
                .reduce("", (outer, inner) -> inner);
    }

    private static String description(JsonNode rule) {
        return rule.path("description").asText("");
    }

    private static List<String> keys(JsonNode properties) {
        List<String> keys = new ArrayList<>();
        properties.fieldNames().forEachRemaining(keys::add);
        keys.remove("$schema");
        return keys;
    }
}
