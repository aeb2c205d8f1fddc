package org.layshaft.kb.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What one schema keyword has against a value, as the end of a sentence that names the value's place. */
final class Complaint {
    private Complaint() {}

    static String about(String keyword, JsonNode rule, JsonNode value) {
        return switch (keyword) {
            case "type" -> "is %s, but must be %s".formatted(kind(value), kinds(rule));
            case "const" -> "is %s, but must be %s".formatted(value, rule);
            case "enum" -> "is %s, which is none of the words it can be".formatted(value);
            case "minimum" -> "is %s, but must be at least %s".formatted(value, rule);
            case "maximum" -> "is %s, but must be at most %s".formatted(value, rule);
            case "exclusiveMinimum" -> "is %s, but must be more than %s".formatted(value, rule);
            case "exclusiveMaximum" -> "is %s, but must be less than %s".formatted(value, rule);
            case "minItems", "minProperties" -> "holds %d, but must hold at least %s".formatted(value.size(), rule);
            case "maxItems" -> "holds %d, but must hold at most %s".formatted(value.size(), rule);
            case "minLength" -> "is an empty text";
            case "maxLength" ->
                "has %d letters, but must have at most %s"
                        .formatted(value.asText().length(), rule);
            case "pattern" -> "is not spelt as it must be";
            case "uniqueItems" -> "names something twice";
            default -> "is not as the format asks";
        };
    }

    private static String kind(JsonNode value) {
        return value.isIntegralNumber()
                ? "a whole number"
                : kind(value.getNodeType().name().toLowerCase(Locale.ROOT));
    }

    private static String kinds(JsonNode rule) {
        if (!rule.isArray()) {
            return kind(rule.asText());
        }
        List<String> kinds = new ArrayList<>();
        rule.forEach(kind -> kinds.add(kind(kind.asText())));
        return String.join(" or ", kinds);
    }

    private static String kind(String type) {
        return switch (type) {
            case "string" -> "a text";
            case "integer" -> "a whole number";
            case "number" -> "a number";
            case "boolean" -> "true or false";
            case "array" -> "a list";
            case "object" -> "an object";
            default -> "null";
        };
    }
}
