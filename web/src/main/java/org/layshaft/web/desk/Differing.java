package org.layshaft.web.desk;

import java.util.List;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Possibility;

/** Tells whether it matters which of several possibilities holds. */
public final class Differing {
    private Differing() {}

    /** The possibilities where they differ in verdict or in what is noticed; none where they come to the same. */
    public static List<Possibility> among(List<Possibility> possibilities) {
        boolean differ = possibilities.stream()
                        .map(possibility -> List.of(possibility.verdict(), says(possibility)))
                        .distinct()
                        .count()
                > 1;
        return differ ? possibilities : List.of();
    }

    private static List<String> says(Possibility possibility) {
        return possibility.notices().stream().map(Notice::says).toList();
    }
}
