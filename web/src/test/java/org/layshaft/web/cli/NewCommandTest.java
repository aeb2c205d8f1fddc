package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewCommandTest {
    @TempDir
    private Path folder;

    private Ran copied(String from, String id, String... more) {
        String[] all = new String[7 + more.length];
        System.arraycopy(new String[] {"new", "--from", from, "--id", id, "--into", folder.toString()}, 0, all, 0, 7);
        System.arraycopy(more, 0, all, 7, more.length);
        return Ran.with(all);
    }

    @Test
    void aCopyHasTheGearsOfItsModel() {
        Ran ran = copied("curlew", "mine");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().contains("mine is in "), ran::out);
        assertTrue(Files.isRegularFile(folder.resolve("own/layouts/mine.json")));
        Ran gears = Ran.with("gears", "mine", "--packs", folder.toString());
        assertEquals(0, gears.status(), gears::err);
        assertTrue(gears.out().contains("5.360"), gears::out);
    }

    @Test
    void oneToStartFromGoesIntoThePackThatIsNamed() throws JsonProcessingException {
        Ran ran = copied("tattler", "mine", "--pack", "estuary", "--json");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(new ObjectMapper().readTree(ran.out()).isObject(), ran::out);
        assertTrue(Files.isRegularFile(folder.resolve("estuary/layouts/mine.json")));
        assertEquals(0, Ran.with("check", folder.resolve("estuary").toString()).status());
    }

    @Test
    void whatIsThereStays() throws IOException {
        copied("curlew", "mine");
        Path file = folder.resolve("own/layouts/mine.json");
        String before = Files.readString(file);

        Ran ran = copied("plover", "mine");

        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("Choose another id"), ran::err);
        assertEquals(before, Files.readString(file));
    }

    @Test
    void anIdOfALayoutThatIsLoadedIsRefused() {
        Ran ran = copied("plover", "curlew");

        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("curlew"), ran::err);
        assertFalse(Files.exists(folder.resolve("own")));
    }

    @Test
    void aFileInTheWayOfTheFolderIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "kept");

        Ran ran = Ran.with("new", "--from", "curlew", "--id", "mine", "--into", file.toString());

        assertEquals(2, ran.status(), ran::out);
        assertTrue(ran.err().contains("a file is where a folder is to be"), ran::err);
        assertEquals("kept", Files.readString(file));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            curlew | ../mine | small letters
            curlew | con     | device
            curlew | layouts | inside a pack
            curlew | Mïne    | small letters
            curlw  | mine    | curlew
            """)
    void whatCannotBeIsRefusedAndNothingMade(String from, String id, String said) {
        Ran ran = copied(from, id);

        assertEquals(2, ran.status(), ran::out);
        assertTrue(ran.err().contains(said), ran::err);
        assertFalse(ran.err().contains("\tat "), ran::err);
        assertFalse(Files.exists(folder.resolve("own")));
    }
}
