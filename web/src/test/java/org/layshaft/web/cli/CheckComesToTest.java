package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check} says what a layout comes to, and holds the printed ratios against it. */
class CheckComesToTest {
    private static final Path CURLEW = Path.of("../fixtures/src/main/resources/layshaft-pack/layouts/curlew.json");

    @TempDir
    private Path folder;

    @Test
    void aSoundLayoutIsSaidInItsRatios() {
        Ran ran = Ran.with("check", CURLEW.toString());

        assertEquals(0, ran.status(), ran::err);
        assertTrue(
                ran.out()
                        .contains(
                                "Curlew comes to: 1st 5.360, 2nd 3.007, 3rd 1.800, 4th 1.352, 5th 1.000, reverse 5.069."),
                ran::out);
        assertTrue(!ran.out().contains("But"), ran::out);
    }

    @Test
    void aToothTooManyShowsAgainstThePrintedRatio() throws IOException {
        String changed = Files.readString(CURLEW)
                .replace("\"gear\": \"third\", \"teeth\": 34", "\"gear\": \"third\", \"teeth\": 35");
        Path file = Files.writeString(folder.resolve("curlew.json"), changed);

        Ran ran = Ran.with("check", file.toString());

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().contains("But 3rd is printed as 1.800 and derived as 1645/888 = 1.852."), ran::out);
    }

    @Test
    void aBrokenLayoutComesToNothingAtAll() throws IOException {
        String changed =
                Files.readString(CURLEW).replace("\"meshes\": \"cluster-third\"", "\"meshes\": \"cluster-thirty\"");
        Path file = Files.writeString(folder.resolve("curlew.json"), changed);

        Ran ran = Ran.with("check", file.toString());

        assertEquals(2, ran.status());
        assertTrue(ran.out().contains("cluster-thirty"), ran::out);
        assertTrue(!ran.out().contains("comes to"), ran::out);
    }
}
