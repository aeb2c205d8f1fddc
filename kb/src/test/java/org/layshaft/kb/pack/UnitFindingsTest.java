package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.testing.Marked;

/** Units that cannot be put in their places. */
class UnitFindingsTest {
    private static final Path PACK = Marked.resource("marked-units");
    private static final Reading READING = PackReader.check(List.of(PACK));

    /** Each holds four of the one before it; the last but one is too large. */
    private static final int LEVELS = 5;

    private static final String LINK = """
            { "format": "layshaft/layout/1", "id": "link", "clutch": false, "shafts": {
              "input": { "along": [{ "gear": "driving", "teeth": 20, "meshes": "driven" }] },
              "output": { "along": [{ "gear": "driven", "teeth": 30 }] }
            } }""";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"axle", "bad", "bad-unit", "unknown", "hen", "egg", "loose", "ends"})
    void finds_what_is_marked_in_each_file_and_no_more(String name) {
        Path file = PACK.resolve("layouts").resolve(name + ".json");
        Marked.check(
                file,
                READING.findings().stream()
                        .filter(finding -> finding.file().equals(file.toString()))
                        .toList(),
                true);
    }

    @Test
    void a_finding_names_the_value_and_says_what_to_do() {
        Finding unknown = READING.findings().stream()
                .filter(finding -> finding.pointer().equals("/units/front")
                        && finding.value().equals("axel"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "It must stand in this pack or in one that is read before it. Perhaps 'axle' is meant.",
                unknown.advice());
    }

    @Test
    void a_unit_must_be_read_before_the_whole() throws IOException {
        Path axle = Files.copy(PACK.resolve("layouts/axle.json"), folder.resolve("axle.json"));
        Path whole = write("whole", "\"rear\": \"axle\"");
        assertEquals(List.of(), PackReader.check(List.of(axle, whole)).findings());
        assertEquals(
                List.of("The layout 'axle' is read after this one: %s, line 3.".formatted(axle)),
                what(PackReader.check(List.of(whole, axle))));
    }

    @Test
    void nothing_of_a_broken_pack_is_a_unit() throws IOException {
        Path whole = write("whole", "\"rear\": \"axle\"");
        Path more = write("more", "\"car\": \"whole\"");
        Reading reading = PackReader.check(List.of(PACK, whole, more));
        assertEquals(
                List.of("trade"),
                reading.knowledge().packs().stream().map(Pack::id).toList());
        assertEquals(List.of(), List.copyOf(reading.knowledge().layouts().keySet()));
        assertEquals(
                List.of(
                        "The pack of the unit 'rear' is broken: see %s and the files beside it."
                                .formatted(PACK.resolve("layouts/axle.json")),
                        "The pack of the unit 'car' is broken: see %s and the files beside it.".formatted(whole)),
                reading.findings().stream()
                        .filter(finding -> finding.file().startsWith(folder.toString()))
                        .map(Finding::what)
                        .toList());
    }

    @Test
    void units_that_grow_beyond_measure_are_refused() throws IOException {
        String inner = "link";
        List<Path> files = new ArrayList<>();
        files.add(Files.writeString(folder.resolve("link.json"), LINK));
        for (int level = 1; level <= LEVELS; level++) {
            String id = "level-" + level;
            files.add(write(id, "\"a\": \"%1$s\", \"b\": \"%1$s\", \"c\": \"%1$s\", \"d\": \"%1$s\"".formatted(inner)));
            inner = id;
        }
        List<String> what = what(PackReader.check(files));
        assertEquals("The layout has more than 1000 gears, sleeves, rails and names.", what.get(0));
        assertEquals(4, what.stream().filter(one -> one.startsWith("The unit")).count());
        assertEquals(5, what.size());
    }

    private Path write(String id, String units) throws IOException {
        String joins = units.contains("\"b\"") ? """
                , "joins": [
                  { "from": "a-output", "to": "b-input" }, { "from": "b-output", "to": "c-input" },
                  { "from": "c-output", "to": "d-input" }
                ]""" : "";
        String text = "{ \"format\": \"layshaft/layout/1\", \"id\": \"%s\", \"units\": { %s }%s }"
                .formatted(id, units, joins);
        return Files.writeString(folder.resolve(id + ".json"), text);
    }

    private static List<String> what(Reading reading) {
        return reading.findings().stream().map(Finding::what).toList();
    }
}
