package org.layshaft.kb.layout;

import java.util.List;

/** A shift rail. Pushed to a side, it takes every fork on it to that side. */
public record Rail(Named named, List<String> forks) implements Part {
    public Rail {
        forks = List.copyOf(forks);
    }

    @Override
    public PartKind kind() {
        return PartKind.RAIL;
    }
}
