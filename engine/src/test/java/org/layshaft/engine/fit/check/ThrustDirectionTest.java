package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/** F-09: reversing the hand of a helix reverses the thrust. The front bearing holds the countershaft toward the front. */
class ThrustDirectionTest {
    private static final String REAR_BEARING = "countershaft-rear-bearing";

    @Test
    void theOtherHandNeedsBearingsThatHoldTowardBothEnds() {
        assertEquals(Outcome.HOLDS, countershaft(FittingBoxes.otherHands()).outcome());
        Judgement open = countershaft(FittingBoxes.otherHands().with(REAR_BEARING, Fact.of(FactName.THRUST, "front")));
        assertEquals(Outcome.FAILS, open.outcome());
        assertTrue(open.figures().stream().anyMatch(figure -> figure.shown().equals("left")), open::toString);
        assertEquals(
                Outcome.HOLDS,
                countershaft(FittingBoxes.otherHands().with(REAR_BEARING, Fact.of(FactName.THRUST, "both")))
                        .outcome());
    }

    @Test
    void whatABearingTakesIsMissedOnlyWhereItMatters() {
        FittingBox untold = FittingBox.phalarope().without(REAR_BEARING, FactName.THRUST);
        assertEquals(Outcome.HOLDS, countershaft(untold).outcome());
        Judgement reversed = countershaft(FittingBoxes.otherHands().without(REAR_BEARING, FactName.THRUST));
        assertEquals(Outcome.UNTOLD, reversed.outcome());
        assertEquals(
                List.of(FactName.THRUST),
                reversed.missing().stream().map(missing -> missing.name()).toList());
        FittingBox heldAnyway = FittingBoxes.otherHands()
                .without(REAR_BEARING, FactName.THRUST)
                .with("countershaft-front-bearing", Fact.of(FactName.THRUST, "both"));
        assertEquals(Outcome.HOLDS, countershaft(heldAnyway).outcome());
    }

    @Test
    void straightTeethNeedNoBearing() {
        FittingBox straight = FittingBox.phalarope()
                .with("cluster-second", Fact.of(FactName.HELIX_DEG, 0))
                .without("cluster-second", FactName.HAND)
                .with(REAR_BEARING, Fact.of(FactName.THRUST, "none"));
        assertEquals(Outcome.HOLDS, countershaft(straight).outcome());
    }

    @Test
    void helicalTeethInPlaceOfStraightOnesPushAnew() {
        FittingBox was = FittingBox.phalarope().always("cluster-second", "", Fact.of(FactName.HELIX_DEG, 0));
        FittingBox now = was.with("cluster-second", Fact.of(FactName.HELIX_DEG, 22))
                .with(REAR_BEARING, Fact.of(FactName.THRUST, "none"));
        assertEquals(Outcome.FAILS, countershaft(now).outcome());
    }

    /** Whatever stays pushes as it did, though nobody knows which way. */
    @Test
    void whatStaysIsNotLookedAt() {
        FittingBox box = FittingBox.phalarope();
        FittingBox same = new FittingBox(box.empty(), box.was(), box.was());
        assertEquals(List.of(), same.judged("thrust-direction"));
    }

    private static Judgement countershaft(FittingBox box) {
        return box.judged("thrust-direction").stream()
                .filter(judgement -> judgement.meeting().one().equals("countershaft"))
                .findFirst()
                .orElseThrow();
    }
}
