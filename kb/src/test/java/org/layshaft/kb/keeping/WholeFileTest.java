package org.layshaft.kb.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;

/** Whatever goes wrong while a file is written, it is the old one or the new one. */
class WholeFileTest {
    private static final Place MINE = new Place("own", "mine", false);
    private static final int KILLS = 2;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "No space left on device, the disk is full",
        "Disk quota exceeded, the quota is used up",
        "Read-only file system, can only be read",
        "Permission denied, rights of its folder",
        "Input/output error, input/output error"
    })
    void what_the_disk_says_is_told_and_the_old_text_stays(String said, String told) {
        Shelf.in(folder).save(MINE, "old", Optional.empty());
        Shelf failing = Shelf.in(folder, new Disk() {
            @Override
            public void write(Path file, byte[] bytes) throws IOException {
                Files.write(file, List.of("half"));
                throw new FileSystemException(file.toString(), null, said);
            }
        });
        ShelfException refused =
                assertThrows(ShelfException.class, () -> failing.save(MINE, "new", Optional.of(Version.of("old"))));

        assertEquals(ShelfException.Kind.DISK, refused.kind());
        assertTrue(refused.getMessage().contains(told), refused.getMessage());
        assertEquals("old", Shelf.in(folder).read(MINE).orElseThrow().text());
        assertEquals(List.of("mine.json"), names(folder.resolve("own/layouts")));
    }

    /** Where the power goes between writing and moving, what is left is looked at by nobody and swept away. */
    @Test
    void what_a_power_cut_leaves_is_not_read_and_goes() throws IOException {
        Shelf.in(folder).save(MINE, "{}", Optional.empty());
        Path left = Files.writeString(folder.resolve("own/layouts/.mine.json.1.saving"), "ha");
        long before = PackReader.read(PackSource.packsIn(folder)).findings().size();
        Files.delete(left);
        assertEquals(
                before, PackReader.read(PackSource.packsIn(folder)).findings().size());

        Files.writeString(left, "ha");
        Shelf.in(folder);
        assertEquals(List.of("mine.json"), names(left.getParent()));
    }

    /** A program that saves without end is killed, some times. */
    @Test
    void who_is_killed_leaves_a_whole_file() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            Process writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            SavingWithoutEnd.class.getName(),
                            folder.toString())
                    .redirectErrorStream(true)
                    .start();
            try {
                assertEquals('.', writer.getInputStream().read(), "it does not begin");
                TimeUnit.MILLISECONDS.sleep(40L + 35L * kill);
            } finally {
                writer.destroyForcibly().waitFor();
            }
            String text = Shelf.in(folder).read(MINE).orElseThrow().text();
            assertEquals(SavingWithoutEnd.LENGTH, text.length());
            assertEquals(1, text.chars().distinct().count());
            assertEquals(List.of("mine.json"), names(folder.resolve("own/layouts")));
        }
    }

    private static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
