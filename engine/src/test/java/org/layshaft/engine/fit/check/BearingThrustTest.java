package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/** The front bearing of the countershaft holds it toward the front, the rear bearing toward the rear. */
class BearingThrustTest {
    private static final String REAR = "countershaft-rear-bearing";
    private static final String FRONT = "countershaft-front-bearing";

    private static Fact thrust(String ends) {
        return Fact.of(FactName.THRUST, ends);
    }

    @Test
    void an_end_that_nothing_holds_any_more_is_lost() {
        assertEquals(Outcome.HOLDS, outcome(FittingBox.phalarope()));
        assertEquals(Outcome.HOLDS, outcome(FittingBox.phalarope().with(REAR, thrust("both"))));
        assertEquals(Outcome.FAILS, outcome(FittingBox.phalarope().with(REAR, thrust("front"))));
        assertEquals(Outcome.FAILS, outcome(FittingBox.phalarope().with(REAR, thrust("none"))));
    }

    @Test
    void another_bearing_may_hold_it() {
        FittingBox box = FittingBox.phalarope().with(REAR, thrust("none"));
        assertEquals(Outcome.HOLDS, outcome(box.with(FRONT, thrust("both"))));
    }

    /** Of one that stays it is asked only where an end is lost. */
    @Test
    void one_that_stays_may_hold_it_if_only_that_were_told() {
        FittingBox box = FittingBox.phalarope();
        CataloguePart front = box.was().get(FRONT);
        FittingBox stays = box.withPart(FRONT, front).with(REAR, thrust("none"));
        assertEquals(Outcome.FAILS, outcome(stays));
        FittingBox untold = box.neverHad(new FittingBox.Spot(FRONT, ""), FactName.THRUST);
        FittingBox lost = untold.withPart(FRONT, untold.was().get(FRONT)).with(REAR, thrust("none"));
        assertEquals(Outcome.UNTOLD, outcome(lost));
        FittingBox kept = untold.withPart(FRONT, untold.was().get(FRONT));
        assertEquals(Outcome.HOLDS, outcome(kept));
    }

    @Test
    void bearings_that_stay_are_not_looked_at() {
        FittingBox box = FittingBox.phalarope();
        assertEquals(List.of(), new FittingBox(box.empty(), box.was(), box.was()).judged("bearing-thrust"));
    }

    private static Outcome outcome(FittingBox box) {
        return box.judged("bearing-thrust").stream()
                .filter(judgement -> judgement.meeting().one().equals("countershaft"))
                .map(Judgement::outcome)
                .findFirst()
                .orElseThrow();
    }
}
