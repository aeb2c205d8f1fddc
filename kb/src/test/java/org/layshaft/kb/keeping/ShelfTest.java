package org.layshaft.kb.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.kb.keeping.Outcome.Overtaken;
import org.layshaft.kb.keeping.Outcome.Written;

class ShelfTest {
    private static final Place MINE = new Place("own", "mine", false);

    @TempDir
    private Path folder;

    private Shelf shelf;

    @BeforeEach
    void open() {
        shelf = Shelf.in(folder);
    }

    @Test
    void what_is_saved_stands_in_its_pack_with_a_manifest() throws IOException {
        Written written = assertInstanceOf(Written.class, shelf.save(MINE, "{}", Optional.empty()));

        assertTrue(written.created());
        assertEquals("{}", Files.readString(folder.resolve("own/layouts/mine.json")));
        assertEquals(Shelf.manifest("own"), Files.readString(folder.resolve("own/pack.json")));
        assertEquals(Optional.of(written.kept()), shelf.read(MINE));
        // SHA-256 of the two bytes {} as any other tool reckons it
        assertEquals(
                "44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a",
                written.kept().version());
        assertEquals(List.of(MINE), shelf.all());
    }

    @Test
    void a_manifest_that_is_there_stays() throws IOException {
        Files.createDirectories(folder.resolve("own"));
        Files.writeString(folder.resolve("own/pack.json"), "mine");
        shelf.save(MINE, "{}", Optional.empty());
        assertEquals("mine", Files.readString(folder.resolve("own/pack.json")));
    }

    @Test
    void who_started_from_what_is_there_replaces_it_and_the_old_one_is_kept() {
        String first = version(shelf.save(MINE, "one", Optional.empty()));
        Written second = assertInstanceOf(Written.class, shelf.save(MINE, "two", Optional.of(first)));

        assertFalse(second.created());
        assertEquals("two", shelf.read(MINE).orElseThrow().text());
        assertEquals(List.of(first), versions());
        assertEquals(Optional.of("one"), shelf.earlier("mine", first));
    }

    @Test
    void who_started_from_something_else_is_told_and_nothing_is_changed() {
        String first = version(shelf.save(MINE, "one", Optional.empty()));
        shelf.save(MINE, "two", Optional.of(first));

        for (Optional<String> startedFrom : List.of(Optional.of(first), Optional.<String>empty())) {
            Overtaken overtaken = assertInstanceOf(Overtaken.class, shelf.save(MINE, "three", startedFrom));
            assertEquals("two", overtaken.theirs().orElseThrow().text());
            assertEquals("two", shelf.read(MINE).orElseThrow().text());
        }
    }

    @Test
    void what_was_deleted_meanwhile_is_told() throws IOException {
        String first = version(shelf.save(MINE, "one", Optional.empty()));
        Files.delete(folder.resolve("own/layouts/mine.json"));
        assertEquals(new Overtaken(Optional.empty()), shelf.save(MINE, "two", Optional.of(first)));
    }

    @Test
    void saving_the_same_again_changes_nothing() {
        shelf.save(MINE, "one", Optional.empty());
        assertInstanceOf(Written.class, shelf.save(MINE, "one", Optional.empty()));
        assertEquals(List.of(), versions());
    }

    @Test
    void a_draft_stands_beside_and_goes_when_it_has_become_a_layout() {
        Written draft = (Written) shelf.save(MINE.asDraft(), "half", Optional.empty());
        assertEquals(List.of(MINE.asDraft()), shelf.all());
        shelf.dropDraft(MINE, "0".repeat(64));
        assertEquals(List.of(MINE.asDraft()), shelf.all());
        shelf.dropDraft(MINE, draft.kept().version());
        assertEquals(List.of(), shelf.all());
        assertEquals(Optional.of("half"), shelf.earlier("mine", draft.kept().version()));
    }

    @Test
    void what_is_put_aside_can_be_had_again() {
        shelf.putAside(MINE, "mine");
        assertEquals(Optional.of("mine"), shelf.earlier("mine", Version.of("mine")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".",
                "..",
                "../x",
                "a/b",
                "a\\b",
                "/etc",
                "-a",
                "A",
                "a.b",
                ".history",
                "con",
                "nul",
                "lpt1",
                "layouts",
                "words",
                "layshaft-pack",
                "a\u0000b",
                "ä",
                "a b"
            })
    void names_that_lead_elsewhere_are_refused(String name) {
        assertEquals(
                ShelfException.Kind.NAME,
                assertThrows(ShelfException.class, () -> new Place(name, "mine", false))
                        .kind());
        assertThrows(ShelfException.class, () -> new Place("own", name, true));
        assertThrows(ShelfException.class, () -> shelf.earlier(name));
        assertThrows(ShelfException.class, () -> shelf.earlier("mine", name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"own", "own/layouts", "own/layouts/mine.json", ".history/mine"})
    void links_are_not_followed(String linked) throws IOException {
        Path outside = Files.createDirectories(folder.resolveSibling(folder.getFileName() + "-outside"));
        try (Stream<Path> before = Files.list(outside)) {
            assertEquals(0, before.count());
        }
        Path link = folder.resolve(linked);
        Files.createDirectories(link.getParent());
        Files.createSymbolicLink(link, outside);
        try {
            shelf.save(MINE, "one", Optional.empty());
            // only the history has not been needed yet
            assertEquals(".history/mine", linked);
            assertThrows(ShelfException.class, () -> shelf.save(MINE, "two", Optional.of(Version.of("one"))));
            assertEquals("one", shelf.read(MINE).orElseThrow().text());
        } catch (ShelfException refused) {
            assertTrue(refused.getMessage().contains("symbolic link"), refused.getMessage());
        }
        try (Stream<Path> after = Files.list(outside)) {
            assertEquals(0, after.count());
        }
        Files.delete(link);
        Files.delete(outside);
    }

    @Test
    void a_folder_that_is_itself_a_pack_is_refused() throws IOException {
        Files.writeString(folder.resolve("pack.json"), "{}");
        assertTrue(assertThrows(ShelfException.class, () -> Shelf.in(folder))
                .getMessage()
                .contains("is itself a pack"));
    }

    private List<String> versions() {
        return shelf.earlier("mine").stream().map(Earlier::version).toList();
    }

    private static String version(Outcome outcome) {
        return ((Written) outcome).kept().version();
    }
}
