package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/** One fact on either side of a limit. */
final class NearMiss {
    private NearMiss() {}

    /** A check holds with the one value of a fact, and fails with the other. */
    static void assertBetween(
            FittingBox box, String check, String place, String feature, String fact, String holds, String fails) {
        FactName name =
                FactName.at(fact).orElseThrow(() -> new IllegalArgumentException("no fact '%s'".formatted(fact)));
        assertOutcome(Outcome.HOLDS, box.with(place, feature, fact(name, holds)), check);
        assertOutcome(Outcome.FAILS, box.with(place, feature, fact(name, fails)), check);
    }

    static void assertOutcome(Outcome outcome, FittingBox box, String check) {
        assertEquals(
                Optional.of(outcome),
                box.outcome(check),
                () -> box.judged(check).toString());
    }

    private static Fact fact(FactName name, String value) {
        return name.unit().isPresent() ? Fact.of(name, Double.parseDouble(value)) : Fact.of(name, value);
    }
}
