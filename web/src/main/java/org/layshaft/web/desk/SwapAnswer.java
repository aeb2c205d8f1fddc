package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.swap.Comparison;

/**
 * A box before and after a change.
 *
 * @param what was changed, in words
 * @param serving of the set that was put in; empty where none was
 */
public record SwapAnswer(List<String> what, Optional<Serving> serving, Comparison comparison) {
    public SwapAnswer {
        what = List.copyOf(what);
    }
}
