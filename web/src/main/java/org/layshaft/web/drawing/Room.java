package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What is taken already, so that texts keep off one another and off the figures. */
final class Room {
    private final List<Box> taken = new ArrayList<>();

    Room(Collection<Box> taken) {
        this.taken.addAll(taken);
    }

    Box take(Box box) {
        taken.add(box);
        return box;
    }

    /** Takes the first of these that is free, or else the one that covers least. */
    Box takeBest(List<Box> wishes) {
        Box best = wishes.get(0);
        for (Box wish : wishes) {
            if (covered(wish) < covered(best)) {
                best = wish;
            }
        }
        return take(best);
    }

    /** All that is taken. */
    Box extent() {
        return Box.of(taken);
    }

    double covered(Box box) {
        return taken.stream().mapToDouble(box::shared).sum();
    }
}
