package org.layshaft.engine.synchro;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.synchro.WearLimit.State;
import org.layshaft.engine.synchro.WearLimit.Wear;

/** Wear tables of workshop manuals, their makers withheld, and of US Army TM 9-2520-246-34-1; all read. */
class PublishedWearTest {
    private static final String ARMY = "TM 9-2520-246-34-1";

    /** A smaller gap is more wear. */
    @Test
    void y09_reservesOfManualsWithALimit() {
        WearLimit manualD = reserve(1.0, 1.35, 0.7, "manual D");
        assertEquals(State.AS_NEW, manualD.judge(1.2).value().orElseThrow());
        assertEquals(State.WITHIN_LIMIT, manualD.judge(0.8).value().orElseThrow());
        assertEquals(State.WORN_OUT, manualD.judge(0.6).value().orElseThrow());
        assertEquals(State.BEYOND_NEW, manualD.judge(1.6).value().orElseThrow());
        for (WearLimit ofManualE : List.of(
                reserve(1.2, 1.4, 0.8, "manual E"),
                reserve(0.9, 1.2, 0.5, "manual E"),
                reserve(0.7, 1.1, 0.5, "manual E"))) {
            assertEquals(State.WORN_OUT, ofManualE.judge(0.45).value().orElseThrow());
            assertEquals(
                    State.AS_NEW,
                    ofManualE
                            .judge(ofManualE.newLeastMm().orElseThrow())
                            .value()
                            .orElseThrow());
        }
    }

    @Test
    void y09_aManualWithoutALimitDoesNotTell() {
        WearLimit manualJ = new WearLimit(
                "the gap between ring and gear",
                Wear.SHRINKS,
                OptionalDouble.of(0.70),
                OptionalDouble.of(1.70),
                OptionalDouble.empty(),
                "manual J");
        assertEquals(
                Optional.of("cannot be told, the wear limit of the gap between ring and gear is missing"),
                manualJ.judge(0.4).whyNot());
    }

    /** Manuals A, B and C: 0.5 mm at least, and nothing of what is new. */
    @Test
    void y09_ruleOfThumb() {
        WearLimit rule = WearLimit.ringReserveByRuleOfThumb();
        assertEquals(State.WORN_OUT, rule.judge(0.49).value().orElseThrow());
        assertEquals(State.WITHIN_LIMIT, rule.judge(0.5).value().orElseThrow());
        assertEquals(State.AS_NEW, rule.judge(1.2).value().orElseThrow());
    }

    /** Manual K says to replace over 2.0 mm: the other way round from all others. */
    @Test
    void y09_aLimitOnTheWrongSideIsRefused() {
        assertEquals(
                List.of(
                        "The limit of the gap between ring and gear is stated as 2 mm, new as 1 mm. Wear makes it smaller, so the limit must be less: check it in manual K."),
                problems(() -> reserve(1.0, 1.3, 2.0, "manual K")));
    }

    /** Tables 2-43 and 2-45: the limit of the clearance is printed as 0.06706, to be read as 0.0670, loose. */
    @Test
    void y10_clearanceFollowsFromGrooveAndRing() {
        WearLimit ring = inches("synchronizer ring width", Wear.SHRINKS, 0.6890, 0.6930, 0.6650);
        WearLimit groove = inches("fork groove width", Wear.GROWS, 0.7090, 0.7170, 0.7320);
        WearLimit clearance = WearLimit.clearance("the fork on the ring", groove, ring);
        assertEquals(0.0160, clearance.newLeastMm().orElseThrow() / 25.4, 1e-9);
        assertEquals(0.0280, clearance.newMostMm().orElseThrow() / 25.4, 1e-9);
        assertEquals(0.0670, clearance.limitMm().orElseThrow() / 25.4, 1e-9);
        assertEquals(State.WORN_OUT, clearance.judge(0.068 * 25.4).value().orElseThrow());
        assertEquals(ARMY, clearance.source());
    }

    /** Tables 2-9 and 2-2. */
    @Test
    void y10_clearancesGrow() {
        for (WearLimit limit : List.of(
                inches("the synchronizer on the sleeve's splines", Wear.GROWS, 0.004, 0.007, 0.0106),
                inches("second gear on its journal", Wear.GROWS, 0.0035, 0.0045, 0.010),
                inches("first-reverse gear on the mainshaft's splines", Wear.GROWS, 0.006, 0.012, 0.016),
                inches("the reverse train's backlash", Wear.GROWS, 0.008, 0.0146, 0.019))) {
            assertEquals(State.WORN_OUT, limit.judge(0.020 * 25.4).value().orElseThrow(), limit.what());
            assertEquals(
                    State.WITHIN_LIMIT,
                    limit.judge(limit.limitMm().orElseThrow()).value().orElseThrow());
        }
    }

    /** Table 2-43 prints the shifter shaft's diameter as 0.9949 to 0.0061, likely 0.9961. */
    @Test
    void y10_aMisprintIsRefused() {
        assertEquals(
                1,
                problems(() -> inches("the shifter shaft", Wear.SHRINKS, 0.9949, 0.0061, 0.9941))
                        .size());
        inches("the shifter shaft", Wear.SHRINKS, 0.9949, 0.9961, 0.9941);
    }

    private static WearLimit reserve(double newLeastMm, double newMostMm, double limitMm, String source) {
        return new WearLimit(
                "the gap between ring and gear",
                Wear.SHRINKS,
                OptionalDouble.of(newLeastMm),
                OptionalDouble.of(newMostMm),
                OptionalDouble.of(limitMm),
                source);
    }

    private static WearLimit inches(String what, Wear wear, double newLeast, double newMost, double limit) {
        return new WearLimit(
                what,
                wear,
                OptionalDouble.of(newLeast * 25.4),
                OptionalDouble.of(newMost * 25.4),
                OptionalDouble.of(limit * 25.4),
                ARMY);
    }

    private static List<String> problems(Runnable making) {
        return assertThrows(ImpossibleFactsException.class, making::run).problems();
    }
}
