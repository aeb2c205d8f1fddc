package org.layshaft.kb.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A value in a file and where it stands. Reading never fails: a value of another type than asked for is absent, because
 * the schema has already said so.
 *
 * @param pointer JSON pointer of the value
 */
public record Item(JsonNode node, String pointer) {

    /** The value of this key; a missing one where there is none. */
    public Item get(String key) {
        JsonNode child = node.isObject() ? node.get(key) : null;
        return new Item(child == null ? MissingNode.getInstance() : child, Pointers.child(pointer, key));
    }

    public boolean isPresent() {
        return !node.isMissingNode();
    }

    public boolean isNull() {
        return node.isNull();
    }

    public boolean isObject() {
        return node.isObject();
    }

    /** The text, unless it is empty or something else. */
    public Optional<String> text() {
        return Optional.of(node)
                .filter(JsonNode::isTextual)
                .map(JsonNode::textValue)
                .filter(text -> !text.isBlank());
    }

    public Optional<Boolean> truth() {
        return Optional.of(node).filter(JsonNode::isBoolean).map(JsonNode::booleanValue);
    }

    public OptionalInt whole() {
        return node.canConvertToExactIntegral() && node.canConvertToInt()
                ? OptionalInt.of(node.intValue())
                : OptionalInt.empty();
    }

    public OptionalDouble number() {
        return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
    }

    /** The number as typed, trailing zeros kept. */
    public Optional<BigDecimal> decimal() {
        return Optional.of(node).filter(JsonNode::isNumber).map(JsonNode::decimalValue);
    }

    /** The items of a list; none where this is something else. */
    public List<Item> items() {
        return IntStream.range(0, node.isArray() ? node.size() : 0)
                .mapToObj(index -> new Item(node.get(index), Pointers.child(pointer, index)))
                .toList();
    }

    /** The items of a list, or the value itself where it is not a list. */
    public List<Item> oneOrMore() {
        if (node.isArray()) {
            return items();
        }
        return isPresent() ? List.of(this) : List.of();
    }

    /** The values of an object by key, in the order of the file; none where this is something else. */
    public Map<String, Item> entries() {
        Map<String, Item> entries = new LinkedHashMap<>();
        if (node.isObject()) {
            node.fieldNames().forEachRemaining(key -> entries.put(key, get(key)));
        }
        return entries;
    }

    public List<String> texts() {
        return oneOrMore().stream().flatMap(item -> item.text().stream()).toList();
    }
}
