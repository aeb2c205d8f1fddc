package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.testing.Marked;

/** Whatever the bytes are, reading ends, and says what is wrong. */
class HostileFilesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final List<String> WRONG =
            List.of("null", "true", "-1", "1e3", "\"\"", "\"x y\"", "[]", "{}", "[[null]]", "{\"gear\":{\"a\":[1]}}");

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void bytes_that_are_no_pack_lead_to_findings(FileKind kind) {
        byte[] noise = new byte[5_000];
        new Random(11).nextBytes(noise);
        List<byte[]> hostile = List.of(
                new byte[0],
                new byte[100],
                noise,
                bytes("null"),
                bytes("[]"),
                bytes("\"text\""),
                bytes("{}"),
                bytes("{\"".repeat(20_000)),
                bytes("[".repeat(400_000)),
                bytes("{\"a\":".repeat(49) + "1" + "}".repeat(49)),
                bytes("{\"shafts\":{\"input\":{\"along\":[" + "{\"sleeve\":\"a\"},".repeat(5_000) + "]}}}"),
                bytes("{\"a\":1," + "\"a\":1,".repeat(5_000) + "}"));
        for (byte[] bytes : hostile) {
            assertFalse(findings(kind, bytes).isEmpty(), () -> kind + " " + Arrays.toString(Arrays.copyOf(bytes, 20)));
        }
    }

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void a_file_that_ends_anywhere_leads_to_findings(FileKind kind) throws IOException {
        byte[] whole = Files.readAllBytes(sound(kind));
        int step = Math.max(1, whole.length / 60);
        for (int end = 0; end < whole.length - 3; end += step) {
            assertFalse(findings(kind, Arrays.copyOf(whole, end)).isEmpty());
        }
    }

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void any_value_may_have_any_wrong_type(FileKind kind) throws IOException {
        JsonNode whole = DocumentReader.read("sound", Files.readAllBytes(sound(kind)))
                .document()
                .orElseThrow()
                .root();
        for (Place place : places(whole)) {
            for (String wrong : WRONG) {
                JsonNode before = place.replace(MAPPER.readTree(wrong));
                findings(kind, MAPPER.writeValueAsBytes(whole));
                place.replace(before);
            }
        }
    }

    /** A value in an object or list. */
    private record Place(JsonNode holder, String key, int index) {
        JsonNode replace(JsonNode value) {
            return holder instanceof ObjectNode object
                    ? object.replace(key, value)
                    : ((ArrayNode) holder).set(index, value);
        }
    }

    /** Some dozens, spread over the file. */
    private static List<Place> places(JsonNode whole) {
        List<Place> all = new ArrayList<>();
        collect(whole, all);
        int step = Math.max(1, all.size() / 40);
        List<Place> some = new ArrayList<>();
        for (int place = 0; place < all.size(); place += step) {
            some.add(all.get(place));
        }
        return some;
    }

    private static void collect(JsonNode node, List<Place> all) {
        node.fieldNames().forEachRemaining(key -> {
            all.add(new Place(node, key, 0));
            collect(node.get(key), all);
        });
        for (int index = 0; node.isArray() && index < node.size(); index++) {
            all.add(new Place(node, "", index));
            collect(node.get(index), all);
        }
    }

    private static List<Finding> findings(FileKind kind, byte[] bytes) {
        ReadPack pack =
                PackReading.of(new PackFiles("hostile", List.of(new PackFile(kind, "hostile.json", bytes)), List.of()));
        BetweenPacks.check(List.of(pack));
        return pack.findings();
    }

    private static Path sound(FileKind kind) {
        return Marked.resource("sound-pack")
                .resolve(
                        switch (kind) {
                            case MANIFEST -> "pack.json";
                            case LAYOUT -> "layouts/dunlin.json";
                            case FAILURE_MODES -> "failure-modes/fork.json";
                            case WORDS -> "words/words.json";
                            case PHRASES -> "phrases/phrases.json";
                            case CATALOGUE -> "catalogues/parts.json";
                        });
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
