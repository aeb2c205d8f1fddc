package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

/** What can stand at a path, and what is said where nothing sensible does. */
class PackPlacesTest {
    private static final Path SOUND = Marked.resource("sound-pack");

    @TempDir
    private Path folder;

    @Test
    void a_folder_of_packs_gives_each_of_them_in_the_order_of_names() throws IOException {
        Packs.jar(SOUND, folder.resolve("b.jar"), "");
        Path other = Files.createDirectories(folder.resolve("a"));
        Files.writeString(other.resolve("pack.json"), Packs.manifest("another"));
        Files.createDirectories(folder.resolve("empty"));
        Files.writeString(folder.resolve("notes.txt"), "not a pack");
        assertEquals(List.of("trade", "another", "marsh"), ids(PackReader.check(List.of(folder))));
        assertEquals(List.of("another", "marsh"), ids(PackReader.read(PackSource.packsIn(folder))));
    }

    @Test
    void a_pack_given_as_the_folder_of_packs_is_the_one_pack() {
        assertEquals(List.of("marsh"), ids(PackReader.read(PackSource.packsIn(SOUND))));
    }

    @Test
    void a_single_layout_file_is_checked_by_itself() {
        Reading reading = PackReader.check(List.of(SOUND.resolve("layouts/dunlin.json")));
        assertEquals(List.of(), reading.findings());
        assertEquals(Set.of("dunlin"), reading.knowledge().layouts().keySet());
    }

    @Test
    void the_trade_pack_itself_can_be_checked() throws IOException {
        Path trade = Path.of("src", "main", "resources", "layshaft-pack");
        assertEquals(List.of(), PackReader.check(List.of(trade)).findings());
    }

    @Test
    void the_trade_pack_is_first_on_the_class_path() {
        assertEquals(List.of("trade"), ids(PackReader.read(PackSource.onClassPath())));
    }

    @Test
    void where_nothing_is_that_is_said() {
        assertEquals(List.of("There is nothing at this place."), told(folder.resolve("missing")));
        assertEquals(List.of("There is no pack in this folder."), told(folder));
    }

    @Test
    void what_is_no_jar_is_said_to_be_none() throws IOException {
        Path file = Files.write(folder.resolve("noise.jar"), new byte[] {1, 2, 3});
        assertEquals(List.of("This is neither a folder nor a jar that can be opened."), told(file));
    }

    @Test
    void a_pack_without_manifest_is_broken() throws IOException {
        Path pack = Packs.copy(SOUND, folder.resolve("pack"));
        Files.delete(pack.resolve("pack.json"));
        assertEquals(List.of("The pack has no pack.json."), told(pack));
    }

    @Test
    void what_nobody_reads_is_doubtful_and_the_pack_is_loaded() throws IOException {
        Path pack = Packs.copy(SOUND, folder.resolve("pack"));
        Packs.copy(pack.resolve("layouts"), pack.resolve("layout"));
        Files.writeString(pack.resolve("notes.json"), "{}");
        Reading reading = PackReader.check(List.of(pack));
        assertEquals(
                List.of(
                        "layout 0 Nothing in this folder is read: no kind of file has a folder of this name.",
                        "notes.json 0 This file is not read: only pack.json stands at the top of a pack."),
                Packs.told(pack, reading.findings()));
        assertEquals("Perhaps 'layouts' is meant.", reading.findings().get(0).advice());
        assertEquals(Set.of("dunlin"), reading.knowledge().layouts().keySet());
    }

    private static List<String> told(Path path) {
        return PackReader.check(List.of(path)).findings().stream()
                .map(Finding::what)
                .toList();
    }

    private static List<String> ids(Reading reading) {
        return reading.knowledge().packs().stream().map(Pack::id).toList();
    }
}
