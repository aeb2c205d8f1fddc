package org.layshaft.kb.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
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
            case "required" -> missingKey(pointer, error.getProperty(), rule);
            case "propertyNames" -> badKey(pointer, error);
            case "oneOf" -> notOneKey(pointer, error.getSchemaNode());
            default -> badValue(pointer, error, rule);
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

    private void missingKey(String pointer, String key, JsonNode rule) {
        String means = description(rule.path("properties").path(key));
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
                description(error.getSchemaNode()));
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

    private void badValue(String pointer, Error error, JsonNode rule) {
        JsonNode value = document.root().at(pointer);
        String what =
                "%s %s.".formatted(subject(pointer), Complaint.about(error.getKeyword(), error.getSchemaNode(), value));
        report.broken(
                pointer, what, value.isTextual() ? value.textValue() : value, advice(error, value, rule, pointer));
    }

    private String advice(Error error, JsonNode value, JsonNode rule, String pointer) {
        String means = description(rule);
        if (error.getKeyword().equals("enum") && value.isTextual()) {
            List<String> words = new ArrayList<>();
            error.getSchemaNode().forEach(word -> words.add(word.asText()));
            return Nearest.advice(value.textValue(), words);
        }
        if (!means.isEmpty()) {
            return means;
        }
        String described = describedAt(pointer, schema);
        return described.isEmpty() ? "See the description of this format." : described;
    }

    /** The part of the schema that holds the keyword which complains. */
    private JsonNode rule(Error error) {
        String fragment = error.getSchemaLocation().getFragment().toString();
        return schema.at(Pointers.parent(fragment));
    }

    /** The description that the schema's properties give along the way to a value; of the last one that has any. */
    private String describedAt(String pointer, JsonNode rule) {
        String found = "";
        JsonNode here = resolved(rule);
        for (String step : steps(pointer)) {
            JsonNode next = here.path("properties").path(step);
            next = next.isMissingNode() ? here.path("items") : next;
            next = next.isMissingNode() ? here.path("additionalProperties") : next;
            found = description(next).isEmpty() ? found : description(next);
            here = resolved(next);
        }
        return found;
    }

    private JsonNode resolved(JsonNode rule) {
        JsonNode reference = rule.path("$ref");
        return reference.isTextual() ? schema.at(reference.textValue().substring(1)) : rule;
    }

    private static List<String> steps(String pointer) {
        return pointer.isEmpty() ? List.of() : List.of(pointer.substring(1).split("/"));
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
