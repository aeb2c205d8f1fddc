package org.layshaft.kb.catalogue;

import java.util.OptionalInt;

/**
 * Serial numbers of boxes, both ends within.
 *
 * @param from the first; empty for from the beginning
 * @param to the last; empty for to the end
 */
public record SerialRange(OptionalInt from, OptionalInt to) {
    /** Every one. */
    public static final SerialRange ALL = new SerialRange(OptionalInt.empty(), OptionalInt.empty());

    public boolean contains(int serial) {
        return serial >= first() && serial <= last();
    }

    public boolean overlaps(SerialRange other) {
        return first() <= other.last() && other.first() <= last();
    }

    public boolean covers(SerialRange other) {
        return first() <= other.first() && other.last() <= last();
    }

    public boolean isEmpty() {
        return first() > last();
    }

    /** In words: {@code serial numbers 1200 to 3499}, {@code all serial numbers}. */
    public String words() {
        if (from.isEmpty() && to.isEmpty()) {
            return "all serial numbers";
        }
        if (to.isEmpty()) {
            return "serial numbers from %d".formatted(first());
        }
        return from.isEmpty()
                ? "serial numbers up to %d".formatted(last())
                : "serial numbers %d to %d".formatted(first(), last());
    }

    private int first() {
        return from.orElse(Integer.MIN_VALUE);
    }

    private int last() {
        return to.orElse(Integer.MAX_VALUE);
    }
}
