package org.layshaft.kb.keeping;

import java.nio.file.Path;
import java.util.Optional;

/** Saves two texts in turn until it is killed, or for a minute. */
final class SavingWithoutEnd {
    static final int LENGTH = 500_000;

    private SavingWithoutEnd() {}

    public static void main(String[] folder) {
        Place mine = new Place("own", "mine", false);
        Shelf shelf = Shelf.in(Path.of(folder[0]));
        long end = System.nanoTime() + 60_000_000_000L;
        for (int round = 0; System.nanoTime() < end; round++) {
            Optional<Kept> before = shelf.read(mine);
            shelf.save(mine, (round % 2 == 0 ? "a" : "b").repeat(LENGTH), before.map(Kept::version));
            if (round == 1) {
                System.out.print('.');
                System.out.flush();
            }
        }
    }
}
