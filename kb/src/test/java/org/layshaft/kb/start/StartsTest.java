package org.layshaft.kb.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.Reading;

class StartsTest {
    private static final Path GUIDE = Path.of("..", "DEVELOPERS.md");

    @TempDir
    private Path folder;

    @Test
    void each_is_sound_by_itself_and_has_the_id_that_it_is_offered_by() throws IOException {
        assertTrue(Starts.all().size() >= 11, () -> "" + Starts.all().size());
        for (Start start : Starts.all()) {
            Path file = Files.writeString(folder.resolve(start.id() + ".json"), start.text());
            Reading reading = PackReader.check(List.of(file));
            assertEquals(List.of(), reading.findings(), start.id());
            assertTrue(reading.knowledge().layout(start.id()).isPresent(), start.id());
        }
    }

    @Test
    void the_guide_prints_each_as_it_is() throws IOException {
        String guide = Files.readString(GUIDE);
        for (Start start : Starts.all()) {
            assertTrue(guide.contains("```jsonc\n" + start.text() + "```"), start.id());
        }
    }
}
