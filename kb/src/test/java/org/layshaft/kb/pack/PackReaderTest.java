package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.testing.Marked;
import org.layshaft.kb.testing.Packs;

class PackReaderTest {
    private static final Path SOUND = Marked.resource("sound-pack");

    @TempDir
    private Path folder;

    @Test
    void a_pack_with_one_of_everything_is_sound() {
        Reading reading = PackReader.check(List.of(SOUND));
        assertEquals(List.of(), reading.findings());
        Pack pack = reading.knowledge().packs().get(1);
        assertEquals(
                new Pack(
                        "marsh",
                        "0.1",
                        "One box with everything the format knows",
                        SOUND.toString(),
                        List.of("dunlin")),
                pack);
    }

    @Test
    void a_jar_holds_what_the_folder_holds() throws IOException {
        Path top = Packs.jar(SOUND, folder.resolve("top.jar"), "");
        Path inner = Packs.jar(SOUND, folder.resolve("inner.jar"), PackSource.ROOT_IN_JAR + "/");
        KnowledgeBase fromFolder = PackReader.check(List.of(SOUND)).knowledge();
        for (Path jar : List.of(top, inner)) {
            Reading reading = PackReader.check(List.of(jar));
            assertEquals(List.of(), reading.findings());
            assertEquals(fromFolder.layouts(), reading.knowledge().layouts());
            assertEquals(fromFolder.failureModes(), reading.knowledge().failureModes());
            assertEquals(fromFolder.words(), reading.knowledge().words());
        }
    }

    @Test
    void findings_in_a_jar_name_the_file_inside() throws IOException {
        Packs.copy(SOUND, folder.resolve("pack"));
        Files.writeString(folder.resolve("pack/phrases/phrases.json"), "{");
        Path jar = Packs.jar(folder.resolve("pack"), folder.resolve("broken.jar"), "layshaft-pack/");
        assertEquals(
                List.of(jar + "!/layshaft-pack/phrases/phrases.json"),
                PackReader.check(List.of(jar)).findings().stream()
                        .map(Finding::file)
                        .toList());
    }

    @Test
    void an_unreadable_file_spoils_its_pack_but_neither_its_neighbours_nor_other_packs() throws IOException {
        Path pack = Packs.copy(SOUND, folder.resolve("pack"));
        Files.writeString(pack.resolve("words/words.json"), "{\n  \"format\" \"layshaft/words/1\"\n}");
        Files.writeString(pack.resolve("failure-modes/fork.json"), "{}");
        Reading reading = PackReader.check(List.of(pack));
        assertFalse(reading.isSound());
        assertEquals(
                List.of(
                        "failure-modes/fork.json 1 The file lacks the key 'format'.",
                        "words/words.json 2 This cannot be read as JSON: line 2, column 12."),
                Packs.told(pack, reading.findings()));
        assertEquals(Set.of(), reading.knowledge().layouts().keySet());
        assertFalse(reading.knowledge().failureModes().isEmpty());
    }

    @Test
    void of_two_packs_with_the_same_layout_the_second_is_broken_and_both_files_are_named() throws IOException {
        Path first = Packs.copy(SOUND, folder.resolve("a"));
        Path second = Packs.copy(SOUND, folder.resolve("b"));
        Files.writeString(second.resolve("pack.json"), Packs.manifest("other"));
        Reading reading = PackReader.check(List.of(first, second));
        assertEquals(
                List.of("trade", "marsh"),
                reading.knowledge().packs().stream().map(Pack::id).toList());
        Finding repeated = reading.findings().stream()
                .filter(finding -> finding.file().endsWith("dunlin.json"))
                .findFirst()
                .orElseThrow();
        assertEquals(second.resolve("layouts/dunlin.json").toString(), repeated.file());
        assertEquals("/id", repeated.pointer());
        assertTrue(repeated.what().contains(first.resolve("layouts/dunlin.json") + ", line 4"), repeated.what());
    }

    @Test
    void two_packs_may_not_share_an_id() throws IOException {
        Path twin = Files.createDirectories(folder.resolve("twin"));
        Files.writeString(twin.resolve("pack.json"), Packs.manifest("marsh"));
        assertEquals(
                List.of("pack.json 1 There is another pack 'marsh' already: %s, line 1."
                        .formatted(SOUND.resolve("pack.json"))),
                Packs.told(twin, PackReader.check(List.of(SOUND, twin)).findings()));
    }

    @Test
    void words_of_several_packs_add_up() throws IOException {
        Path pack = Files.createDirectories(folder.resolve("pack/words")).getParent();
        Files.writeString(pack.resolve("pack.json"), Packs.manifest("more"));
        Files.writeString(
                pack.resolve("words/more.json"),
                "{ \"format\": \"layshaft/words/1\", \"terms\": { \"countershaft\": { \"also\": [\"lay\", \"layshaft\"] } } }");
        Reading reading = PackReader.check(List.of(pack));
        assertEquals(List.of(), reading.findings());
        List<String> also =
                reading.knowledge().words().terms().get("countershaft").also();
        assertEquals("layshaft", also.get(0));
        assertEquals("lay", also.get(also.size() - 1));
        assertEquals(1, also.stream().filter("layshaft"::equals).count());
    }
}
