package org.layshaft.kb.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.layshaft.kb.json.Schemas;

/** The schema of catalogues and the facts that the records know are the same. */
class CatalogueSchemaTest {
    private static final JsonNode SCHEMA = Schemas.text("catalogue");

    @ParameterizedTest
    @EnumSource(Section.class)
    void a_section_has_the_same_facts_in_both(Section section) {
        JsonNode properties = SCHEMA.at("/$defs/%s/properties".formatted(section.word()));
        assertEquals(
                section.facts().stream().map(FactName::key).collect(Collectors.toCollection(TreeSet::new)),
                keys(properties));
        assertEquals(
                "#/$defs/" + section.word(),
                SCHEMA.at("/$defs/part/properties/%s/$ref".formatted(section.word()))
                        .asText());
    }

    @ParameterizedTest
    @EnumSource(FactName.class)
    void a_fact_has_the_same_sort_of_value_in_both(FactName name) {
        JsonNode value =
                SCHEMA.at("/$defs/%s/properties/%s".formatted(name.section().word(), name.key()));
        if (name.unit().isPresent()) {
            String type = name.unit().get() == FactName.Unit.COUNT ? "integer" : "number";
            assertEquals(type, value.path("type").asText());
        } else if (name.words().isEmpty()) {
            assertEquals("string", value.path("type").asText());
        } else {
            assertEquals(name.words(), texts(value.path("enum")));
        }
    }

    @Test
    void the_kinds_and_shapes_are_the_same() {
        assertEquals(
                Arrays.stream(ComponentKind.values()).map(ComponentKind::word).toList(),
                texts(SCHEMA.at("/$defs/part/properties/kind/enum")));
        assertEquals(
                Arrays.stream(SetShape.values()).map(SetShape::word).toList(),
                texts(SCHEMA.at("/$defs/set/properties/shape/enum")));
    }

    private static Set<String> keys(JsonNode object) {
        Set<String> keys = new TreeSet<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }
}
