package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefusingTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            gears curlw                                  | No layout has the id "curlw"
            gears                                        | LAYOUT
            gears curlew --fault 6-7-fork                | 6-7
            gears curlew --fault                         | --fault
            gears curlew --purple                        | --purple
            ask --layout curlew fish and chips           | fish
            ask --layout dunlin what turns in neutral    | dunlin
            check nowhere                                | There is nothing at "nowhere"
            layouts --packs nowhere                      | There is no folder "nowhere"
            serve --port 99999                           | There is no port 99999
            serve --port many                            | many
            purple                                       | purple
            """)
    void badInputIsSaidOnTheErrorStream(String command, String said) {
        Ran ran = Ran.with(command.split(" "));

        assertEquals(2, ran.status(), ran::err);
        assertTrue(ran.err().contains(said), ran::err);
        assertEquals("", ran.out());
        assertFalse(ran.err().contains("\tat "), ran::err);
    }

    @Test
    void nothingToDoIsSaidToo() {
        assertEquals(2, Ran.with().status());
    }

    @Test
    void theNearestIsOffered() {
        assertTrue(Ran.with("gears", "curlw").err().contains("Perhaps:\n  curlew\n"));
        assertTrue(Ran.with("geras", "curlew").err().contains("gears"));
    }

    @Test
    void whatIsNotUnderstoodIsSaidInJsonAsWell() throws JsonProcessingException {
        Ran ran = Ran.with("ask", "--layout", "curlew", "--json", "fish and chips");

        assertEquals(2, ran.status());
        assertFalse(ran.err().isBlank());
        JsonNode json = new ObjectMapper().readTree(ran.out());
        assertTrue(json.has("understood") && json.get("understood").isNull(), ran::out);
        assertFalse(json.get("suggestions").isEmpty(), ran::out);
    }

    @Test
    void aTakenPortIsSaidWithWhatToDo() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Ran ran = Ran.with("serve", "--port", "" + taken.getLocalPort());
            assertEquals(2, ran.status());
            assertTrue(ran.err().contains("is taken"), ran::err);
        }
    }

    @Test
    void checkSaysFilePlaceValueAndAdvice(@TempDir Path folder) throws IOException {
        Path layout = brokenLayout(folder);
        Ran ran = Ran.with("check", folder.toString());

        assertEquals(2, ran.status(), ran::out);
        assertTrue(
                ran.out().lines().anyMatch(line -> line.matches(".*" + layout.getFileName() + ":\\d+ .* — .+\\. .+")),
                ran::out);
        assertTrue(ran.out().endsWith("Broken: it would not be loaded.\n"), ran::out);
    }

    @Test
    void aBrokenPackIsLeftOutAndTheOthersAnswer(@TempDir Path packs) throws IOException {
        brokenLayout(Files.createDirectory(packs.resolve("estuary")));
        Ran ran = Ran.with("layouts", "--packs", packs.toString());

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().contains("curlew"), ran::out);
        assertFalse(ran.out().contains("dunlin"), ran::out);
        assertTrue(ran.err().startsWith("A pack is broken, and nothing of it is loaded:\n"), ran::err);
    }

    @Test
    void aFolderWithoutPacksIsRefused(@TempDir Path packs) {
        Ran ran = Ran.with("layouts", "--packs", packs.toString());

        assertEquals(2, ran.status(), ran::out);
        assertTrue(ran.err().contains("There is no pack in the folder"), ran::err);
    }

    private static Path brokenLayout(Path pack) throws IOException {
        Files.writeString(pack.resolve("pack.json"), """
                { "format": "layshaft/pack/1", "id": "estuary", "version": "1.0.0", "title": "Estuary", "licence": "Apache-2.0" }
                """);
        return Files.writeString(Files.createDirectory(pack.resolve("layouts")).resolve("dunlin.json"), """
                {
                  "format": "layshaft/layout/1",
                  "id": "dunlin",
                  "colour": "green"
                }
                """);
    }
}
