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
        double least = Double.POSITIVE_INFINITY;
        for (Box wish : wishes) {
            double covered = covered(wish);
            if (covered < least) {
                best = wish;
                least = covered;
            }
            if (covered == 0) {
                break;
            }
        }
        return take(best);
    }

    /** All that is taken. */
    Box extent() {
        return Box.of(taken);
    }

    double covered(Box box) {
        double sum = 0;
        for (Box other : taken) {
            sum += other.shared(box);
        }
        return sum;
    }
}
