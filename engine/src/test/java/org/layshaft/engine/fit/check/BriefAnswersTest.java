package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.AskedChecks;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.FitChecks;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.Fact;

/** In tables only the outcome counts; it is the same as where everything is told. */
class BriefAnswersTest {
    private static final int BOXES = 300;
    private static final long SEED = 20_260_611;

    @Test
    void outcomesAreTheSameWithAndWithoutWordsWhateverIsWrongWithABox() {
        Random random = new Random(SEED);
        int failing = 0;
        for (int made = 0; made < BOXES; made++) {
            FittingBox box = spoilt(random);
            Fitted before = box.empty().with(box.was());
            Fitted now = before.with(box.is());
            for (FitCheck check : FitChecks.found().all()) {
                List<Outcome> told = outcomes(AskedChecks.of(check, before, now));
                assertEquals(told, outcomes(AskedChecks.briefly(check, before, now)), check.id());
                failing += told.contains(Outcome.FAILS) ? 1 : 0;
            }
        }
        assertTrue(failing > BOXES, "too little was spoilt: " + failing);
    }

    /** Any number may turn into another, out of all reason, and any fact may be missing. */
    private static FittingBox spoilt(Random random) {
        FittingBox box =
                FittingBoxes.all().get(random.nextInt(FittingBoxes.all().size()));
        for (int wrong = 0; wrong < 5; wrong++) {
            List<FittingBox.Spot> spots = new ArrayList<>(box.facts().keySet());
            FittingBox.Spot spot = spots.get(random.nextInt(spots.size()));
            List<Fact> facts = new ArrayList<>(box.facts().get(spot));
            if (!facts.isEmpty()) {
                Fact fact = facts.get(random.nextInt(facts.size()));
                boolean number = fact.name().unit().isPresent();
                box = number && random.nextInt(3) > 0
                        ? box.with(spot.place(), spot.feature(), Fact.of(fact.name(), other(random, fact.number())))
                        : box.without(spot, fact.name());
            }
        }
        return box;
    }

    private static double other(Random random, double number) {
        return switch (random.nextInt(4)) {
            case 0 -> Math.rint(number * 1.1) + 1;
            case 1 -> number * 0.9;
            case 2 -> number * 10;
            default -> number / 10;
        };
    }

    private static List<Outcome> outcomes(List<Judgement> judgements) {
        return judgements.stream().map(Judgement::outcome).toList();
    }
}
