package org.layshaft.web.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.keeping.Place;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.start.Starts;
import org.layshaft.web.desk.Desk;

/** What is known is replaced whole, and only by what could be loaded. */
class LibraryTest {
    private static final String DUNLIN = Starts.of("dunlin").orElseThrow().text();
    private static final Place PLACE = new Place("own", "dunlin", false);

    @TempDir
    private Path folder;

    private Library library;

    @BeforeEach
    void open() {
        library = Library.over(PackSource.onClassPath(), Optional.of(Shelf.in(folder)));
    }

    @Test
    void whoAskedBeforeGoesOnWithWhatWasKnownThen() {
        Desk before = library.desk();
        library.save(PLACE, DUNLIN, Optional.empty());

        assertNotSame(before, library.desk());
        assertTrue(before.knowledge().layout("dunlin").isEmpty());
        assertTrue(library.desk().knowledge().layout("dunlin").isPresent());
        assertTrue(library.desk().knowledge().layout("curlew").isPresent());
    }

    @Test
    void aLookAndADraftLeaveWhatIsKnownAsItIs() {
        Desk before = library.desk();
        assertTrue(library.look("own", DUNLIN).isSound());
        library.save(PLACE.asDraft(), DUNLIN, Optional.empty());
        assertSame(before, library.desk());
    }

    /** Somebody breaks another file of the pack by hand. */
    @Test
    void whereThePackDoesNotLoadWhatWasKnownStays() throws IOException {
        Saved.Done first = (Saved.Done) library.save(PLACE, DUNLIN, Optional.empty());
        Files.writeString(folder.resolve("own/layouts/other.json"), "{");
        Desk before = library.desk();
        Saved.Done second = assertInstanceOf(
                Saved.Done.class,
                library.save(
                        PLACE,
                        DUNLIN.replace("Two", "2"),
                        Optional.of(first.kept().version())));

        assertSame(before, library.desk());
        assertTrue(second.unloaded().get(0).file().endsWith("other.json"), second.unloaded()::toString);

        Files.delete(folder.resolve("own/layouts/other.json"));
        Saved.Done third = (Saved.Done)
                library.save(PLACE, DUNLIN, Optional.of(second.kept().version()));
        assertTrue(third.unloaded().isEmpty());
        assertNotSame(before, library.desk());
    }

    @Test
    void whatWouldBreakAnotherLayoutIsNotSaved() {
        Saved.Done unit = (Saved.Done) library.save(PLACE, DUNLIN, Optional.empty());
        library.save(new Place("own", "two", false), """
                {"format": "layshaft/layout/1", "id": "two", "units": {"box": "dunlin"},
                 "shafts": {"tail": {"along": []}}, "joins": [{"from": "box-output", "to": "tail"}], "output": "tail"}
                """, Optional.empty());
        assertTrue(library.desk().knowledge().layout("two").isPresent(), library.findings()::toString);

        String renamed = DUNLIN.replace("\"id\": \"dunlin\"", "\"id\": \"dunlins\"");
        Saved saved = library.save(PLACE, renamed, Optional.of(unit.kept().version()));
        Saved.Broken broken = assertInstanceOf(Saved.Broken.class, saved);
        assertFalse(broken.look().elsewhere().isEmpty());
        assertTrue(broken.look().elsewhere().get(0).file().endsWith("two.json"));
    }

    @Test
    void aTextWithoutAnIdCanBeLookedAt() {
        Look look = library.look("own", "{}");
        assertFalse(look.isSound());
        assertTrue(look.findings().stream().anyMatch(finding -> finding.what().contains("'id'")));
        assertEquals(Optional.of("x"), Library.idIn("{ \"id\": \"x\", broken"));
    }

    @Test
    void idsThatAreTakenAreGivenANumber() {
        assertEquals("curlew-2", library.free("curlew"));
        library.save(PLACE.asDraft(), "{", Optional.empty());
        assertEquals("dunlin-2", library.free("dunlin"));
        assertEquals("free", library.free("free"));
    }
}
