package org.layshaft.engine.fault;

import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Side;

/** Sides as faults tell them. */
public final class Sides {
    private Sides() {}

    /** A side by its word; empty for neutral. */
    public static Optional<Side> of(String word) {
        return Stream.of(Side.values()).filter(side -> side.word().equals(word)).findFirst();
    }
}
