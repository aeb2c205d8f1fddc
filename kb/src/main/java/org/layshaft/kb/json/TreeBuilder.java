package org.layshaft.kb.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BigIntegerNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Builds the tree of a file in one pass, noting the line of every value and the keys that stand twice. */
final class TreeBuilder {
    /** The longest number that is read, in characters. */
    static final int LONGEST_NUMBER = 40;

    /** With its letter and sign: {@code e-12}. */
    private static final int LONGEST_EXPONENT = 4;

    private final JsonParser parser;
    private final Map<String, Integer> lines = new HashMap<>();
    private final List<RepeatedKey> repeated = new ArrayList<>();

    TreeBuilder(JsonParser parser) {
        this.parser = parser;
    }

    /** A key that stands twice in one object; the first is kept. */
    record RepeatedKey(String pointer, String key, int firstLine, int line) {
        void tell(Report report) {
            report.brokenAt(
                    pointer,
                    line,
                    "The key '%s' stands twice in one object, first on line %d.".formatted(key, firstLine),
                    key,
                    "Keep one of the two.");
        }
    }

    /** A limit that keeps reading short is passed. */
    static final class BeyondLimitException extends RuntimeException {
        private final transient Limit limit;

        BeyondLimitException(Limit limit) {
            super(limit.what());
            this.limit = limit;
        }

        int line() {
            return limit.line();
        }

        String value() {
            return limit.value();
        }

        String advice() {
            return limit.advice();
        }
    }

    private record Limit(int line, String what, String value, String advice) {}

    Document document(String file) throws IOException {
        try {
            parser.nextToken();
            if (parser.currentToken() == null) {
                throw beyond("There is nothing in the file but comments.", "", "Give it its content, or delete it.");
            }
            JsonNode root = value("");
            if (parser.nextToken() != null) {
                throw beyond(
                        "There is more after the end of the object.",
                        parser.getText(),
                        "Put everything into one pair of braces.");
            }
            return new Document(file, root, Map.copyOf(lines));
        } catch (StreamConstraintsException limit) {
            throw parser.getParsingContext().getNestingDepth() >= DocumentReader.DEEPEST
                    ? beyond(
                            "Objects and lists lie more than %d deep in one another.".formatted(DocumentReader.DEEPEST),
                            "",
                            "No format of ours needs that; look for brackets repeated by mistake.")
                    : beyond(
                            "A number has more than %d digits.".formatted(LONGEST_NUMBER),
                            "",
                            "Look for digits repeated by mistake.");
        }
    }

    List<RepeatedKey> repeatedKeys() {
        return repeated;
    }

    private JsonNode value(String pointer) throws IOException {
        lines.putIfAbsent(pointer, line());
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(pointer);
            case START_ARRAY -> list(pointer);
            case VALUE_STRING -> TextNode.valueOf(parser.getText());
            case VALUE_NUMBER_INT -> whole(parser.getBigIntegerValue());
            case VALUE_NUMBER_FLOAT -> DecimalNode.valueOf(decimal());
            case VALUE_TRUE -> BooleanNode.TRUE;
            case VALUE_FALSE -> BooleanNode.FALSE;
            default -> NullNode.getInstance();
        };
    }

    private ObjectNode object(String pointer) throws IOException {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String child = Pointers.child(pointer, key);
            if (object.has(key)) {
                repeated.add(new RepeatedKey(child, key, lines.get(child), line()));
                parser.nextToken();
                parser.skipChildren();
            } else {
                lines.put(child, line());
                parser.nextToken();
                object.set(key, value(child));
            }
        }
        return object;
    }

    private ArrayNode list(String pointer) throws IOException {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(value(Pointers.child(pointer, list.size())));
        }
        return list;
    }

    private static JsonNode whole(BigInteger value) {
        return value.bitLength() < Integer.SIZE ? IntNode.valueOf(value.intValue()) : BigIntegerNode.valueOf(value);
    }

    /** Kept as typed, trailing zeros and all; an exponent that would fill the memory when written out is refused. */
    private BigDecimal decimal() throws IOException {
        String typed = parser.getText();
        int exponent = Math.max(typed.indexOf('e'), typed.indexOf('E'));
        if (exponent >= 0 && typed.length() - exponent > LONGEST_EXPONENT) {
            throw beyond("The number is beyond anything a gearbox has.", typed, "Write it out, without an exponent.");
        }
        return new BigDecimal(typed);
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private BeyondLimitException beyond(String what, String value, String advice) {
        return new BeyondLimitException(new Limit(parser.currentLocation().getLineNr(), what, value, advice));
    }
}
