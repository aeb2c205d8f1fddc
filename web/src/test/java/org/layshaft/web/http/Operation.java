package org.layshaft.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** What the description says of reading one address. */
record Operation(String path, JsonNode node) {

    static List<Operation> all(JsonNode description) {
        List<Operation> all = new ArrayList<>();
        description.get("paths").fields().forEachRemaining(entry -> {
            if (entry.getValue().has("get")) {
                all.add(new Operation(entry.getKey(), entry.getValue().get("get")));
            }
        });
        return all;
    }

    /** The path as the table of addresses has it. */
    String pattern() {
        return path.replaceAll("\\{[a-z]+}", "*");
    }

    /** What stands for the star. */
    String rest() {
        return parameters("path").stream()
                .map(parameter -> parameter.get("example").asText())
                .findFirst()
                .orElse("");
    }

    Set<String> queryNames() {
        return parameters("query").stream()
                .map(parameter -> parameter.get("name").asText())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** What must be given, and each of the rest beside it, one at a time. */
    List<Map<String, List<String>>> oneByOne() {
        return parameters("query").stream()
                .flatMap(parameter -> Stream.of(needed(parameter), with(needed(parameter), parameter)))
                .collect(Collectors.collectingAndThen(
                        Collectors.toCollection(LinkedHashSet::new),
                        queries -> queries.isEmpty() ? List.of(Map.of()) : List.copyOf(queries)));
    }

    /** What must be given where this parameter is. */
    Map<String, List<String>> needed(JsonNode given) {
        String name = given.get("name").asText();
        List<List<String>> needs = StreamSupport.stream(node.path("x-needs").spliterator(), false)
                .map(need -> StreamSupport.stream(need.spliterator(), false)
                        .map(JsonNode::asText)
                        .toList())
                .toList();
        List<String> need = needs.stream()
                .filter(each -> each.contains(name))
                .findFirst()
                .orElse(needs.isEmpty() ? List.of() : needs.get(0));
        Map<String, List<String>> query = new LinkedHashMap<>();
        for (JsonNode parameter : parameters("query")) {
            if (parameter.path("required").asBoolean()
                    || need.contains(parameter.get("name").asText())) {
                query.putAll(with(Map.of(), parameter));
            }
        }
        return query;
    }

    private static Map<String, List<String>> with(Map<String, List<String>> others, JsonNode parameter) {
        JsonNode example = parameter.get("example");
        List<String> values = example.isArray()
                ? StreamSupport.stream(example.spliterator(), false)
                        .map(JsonNode::asText)
                        .toList()
                : List.of(example.asText());
        Map<String, List<String>> query = new LinkedHashMap<>(others);
        query.put(parameter.get("name").asText(), values);
        return query;
    }

    String address(Map<String, List<String>> query) {
        String asked = query.entrySet().stream()
                .flatMap(entry -> entry.getValue().stream().map(value -> entry.getKey() + "=" + Served.encoded(value)))
                .collect(Collectors.joining("&"));
        return path.replaceAll("\\{[a-z]+}", rest()) + (asked.isEmpty() ? "" : "?" + asked);
    }

    List<JsonNode> parameters(String in) {
        return StreamSupport.stream(node.path("parameters").spliterator(), false)
                .filter(parameter -> parameter.get("in").asText().equals(in))
                .toList();
    }

    @Override
    public String toString() {
        return path;
    }
}
