package org.layshaft.kb.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.EffectKind;
import org.layshaft.kb.failure.EffectKind.Argument;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.PartKind;

/** The schemas are the reference of the formats, so they are held to the words that the records know. */
class SchemasTest {
    private static final JsonNode MODES = Schemas.text("failure-modes");

    @ParameterizedTest
    @ValueSource(strings = {"pack", "layout", "failure-modes", "words", "phrases", "catalogue"})
    void every_property_is_described(String kind) {
        JsonNode schema = Schemas.text(kind);
        assertEquals(
                "https://json-schema.org/draft/2020-12/schema",
                schema.path("$schema").asText());
        List<String> undescribed = new ArrayList<>();
        collectUndescribed(schema, "", undescribed);
        assertEquals(List.of(), undescribed);
    }

    /** A description is a sentence or more. */
    private static void collectUndescribed(JsonNode node, String pointer, List<String> undescribed) {
        if (pointer.endsWith("/properties")) {
            node.properties().forEach(property -> {
                String description = property.getValue().path("description").asText();
                if (!description.matches("[A-Z].*[.]")) {
                    undescribed.add(Pointers.child(pointer, property.getKey()));
                }
            });
        }
        node.properties()
                .forEach(child ->
                        collectUndescribed(child.getValue(), Pointers.child(pointer, child.getKey()), undescribed));
    }

    @ParameterizedTest
    @EnumSource(EffectKind.class)
    void every_effect_stands_in_the_schema_with_its_argument(EffectKind kind) {
        JsonNode effect = MODES.at("/$defs/effect/properties/" + kind.word());
        if (kind.argument() == Argument.NONE) {
            assertTrue(effect.path("const").booleanValue());
        } else {
            assertEquals(
                    "#/$defs/" + kind.argument().name().toLowerCase(Locale.ROOT),
                    effect.path("$ref").asText());
        }
    }

    @Test
    void the_schema_knows_no_effect_but_these() {
        Set<String> effects = keys(MODES.at("/$defs/effect/properties"));
        effects.remove("if");
        assertEquals(words(EffectKind.values(), EffectKind::word), effects);
        Set<String> ways = StreamSupport.stream(MODES.at("/$defs/effect/oneOf").spliterator(), false)
                .map(way -> way.at("/required/0").asText())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(effects, ways);
    }

    @Test
    void the_schema_knows_every_time_of_noticing() {
        assertEquals(
                words(NoticeWhen.values(), NoticeWhen::word), list(MODES.at("/$defs/notice/properties/when/enum")));
    }

    @Test
    void the_schema_knows_every_situation_heat_and_depth() {
        assertEquals(words(Situation.values(), Situation::word), list(MODES.at("/$defs/situation/enum")));
        assertEquals(words(Heat.values(), Heat::word), list(MODES.at("/$defs/notice/properties/heat/enum")));
        assertEquals(words(Depth.values(), Depth::word), list(MODES.at("/$defs/mode/properties/seen_at/enum")));
    }

    @Test
    void the_schema_knows_every_kind_of_part() {
        Set<String> kinds = keys(MODES.path("properties"));
        kinds.removeAll(List.of("$schema", "format"));
        assertEquals(words(PartKind.values(), PartKind::word), kinds);
    }

    @Test
    void the_schema_knows_every_form_of_interlock() {
        assertEquals(
                words(InterlockKind.values(), kind -> kind.name().toLowerCase(Locale.ROOT)),
                list(Schemas.text("layout").at("/$defs/selector/properties/interlock/enum")));
    }

    private static <E> Set<String> words(E[] values, Function<E, String> word) {
        return Arrays.stream(values).map(word).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> keys(JsonNode object) {
        Set<String> keys = new TreeSet<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static Set<String> list(JsonNode list) {
        Set<String> words = new TreeSet<>();
        list.forEach(word -> words.add(word.asText()));
        return words;
    }
}
