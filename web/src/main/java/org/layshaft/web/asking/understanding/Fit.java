package org.layshaft.web.asking.understanding;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.web.asking.Intent;

/**
 * How well a question fits a pattern.
 *
 * @param score from 0 to 1
 * @param gears mentions that stand for gears
 * @param part the mention that stands for the part asked about
 */
record Fit(Intent intent, Pattern pattern, double score, List<Mention> gears, Optional<Mention> part) {
    /** Questions for which it matters what is said of a part, and which do not ask about one. */
    private static final Set<Intent> OF_FAILURES =
            EnumSet.of(Intent.GEARS_LEFT, Intent.WHAT_HAPPENS, Intent.TWO_AT_ONCE, Intent.WHY_NOT);

    /** Parts that are named, that this question does not take up, and that may change its meaning; as typed. */
    List<String> partsThatMatter(Rest rest) {
        return rest.parts().stream()
                .filter(mention -> OF_FAILURES.contains(intent))
                .filter(mention -> part.filter(mention::equals).isEmpty())
                .map(Mention::typed)
                .toList();
    }
}
