package org.layshaft.web.desk;

import java.util.List;
import org.layshaft.engine.api.Possibility;

/** Tells whether it matters which of several possibilities holds. */
public final class Differing {
    private Differing() {}

    /** The possibilities where it matters which of them holds; none where there is only one. */
    public static List<Possibility> among(List<Possibility> possibilities) {
        return possibilities.size() > 1 ? possibilities : List.of();
    }
}
