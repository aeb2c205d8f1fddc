package org.layshaft.kb.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.keeping.Outcome.Written;

/** Several save at once, through several shelves on one folder. */
class TwoWritersTest {
    private static final Place MINE = new Place("own", "mine", false);
    private static final int WRITERS = 4;
    private static final int ROUNDS = 25;

    @TempDir
    private Path folder;

    /** Each adds a line to what it read, again and again till it is saved; so a save that is lost is a line that is missing. */
    @Test
    void no_save_is_lost() throws Exception {
        ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
        List<Future<?>> all = new ArrayList<>();
        for (int writer = 0; writer < WRITERS; writer++) {
            Shelf shelf = Shelf.in(folder);
            String line = "writer " + writer + "\n";
            all.add(writers.submit(() -> {
                for (int round = 0; round < ROUNDS; round++) {
                    add(shelf, line);
                }
            }));
        }
        for (Future<?> writer : all) {
            writer.get();
        }
        writers.shutdown();

        Shelf shelf = Shelf.in(folder);
        assertEquals(
                WRITERS * ROUNDS, shelf.read(MINE).orElseThrow().text().lines().count());
        assertEquals(WRITERS * ROUNDS - 1, shelf.earlier("mine").size());
    }

    private static void add(Shelf shelf, String line) {
        Outcome outcome;
        do {
            Optional<Kept> before = shelf.read(MINE);
            outcome = shelf.save(MINE, before.map(Kept::text).orElse("") + line, before.map(Kept::version));
        } while (!(outcome instanceof Written));
    }
}
