package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.stated.ImpossibleFactsException;

/** Facts that cannot be so fail a check, with the reason as a remark. */
final class Impossible {
    private static final Limit POSSIBLE = new Limit("must be facts that there can be", Limit.GEOMETRY);

    private Impossible() {}

    static Optional<Judgement> fails(Judging judging, Supplier<Optional<Judgement>> reckoning) {
        try {
            return reckoning.get();
        } catch (ImpossibleFactsException impossible) {
            return judging.holds(false, List.of(), POSSIBLE)
                    .map(judgement -> judgement.isUntold() ? judgement : judgement.remarking(impossible.getMessage()));
        }
    }
}
