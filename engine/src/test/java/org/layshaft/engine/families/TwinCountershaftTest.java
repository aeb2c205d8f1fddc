package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Side;

/** Heron: two countershafts, a splitter in front, an epicyclic range behind. */
class TwinCountershaftTest {
    /** The ring held, the sun driving, the carrier driven: 1 + ring / sun. */
    private static final Fraction LOW_RANGE = Fraction.of(24 + 72, 24);

    private static final Map<String, Fraction> RANGES = Map.of("low", LOW_RANGE, "high", Fraction.ONE);
    private static final Map<String, Fraction> SPLITS =
            Map.of("slow", Fraction.of(51, 42), "fast", Fraction.of(47, 46));

    @ParameterizedTest
    @CsvSource({
        "L-R-sleeve, FRONT, 74/19",
        "1-2-sleeve, REAR, 68/25",
        "1-2-sleeve, FRONT, 62/31",
        "3-4-sleeve, REAR, 54/39",
        "L-R-sleeve, REAR, -66/18",
        // straight through from the fast pair: backward through that pair when the slow one drives
        "3-4-sleeve, FRONT, 46/47"
    })
    void everyCombinationIsTheProductOfItsSections(String sleeve, Side side, String pair) {
        RANGES.forEach((range, behind) -> SPLITS.forEach((split, inFront) -> assertEquals(
                inFront.times(Pairs.ratio(pair)).times(behind),
                at(sleeve, side, range, split).ratio(),
                () -> range + " " + split)));
    }

    @Test
    void inFourthFastHighTheDriveGoesStraightThrough() {
        assertEquals(Fraction.ONE, at("3-4-sleeve", Side.FRONT, "high", "fast").ratio());
    }

    /** Without low in the high range there are eighteen, no step wider than a quarter nor narrower than a tenth. */
    @Test
    void theEighteenThatAreUsedMakeALadder() {
        List<Fraction> ladder = new ArrayList<>();
        for (String range : RANGES.keySet()) {
            for (String split : SPLITS.keySet()) {
                Stream<Placed> mains = Stream.of(
                        at("1-2-sleeve", Side.REAR, range, split),
                        at("1-2-sleeve", Side.FRONT, range, split),
                        at("3-4-sleeve", Side.REAR, range, split),
                        at("3-4-sleeve", Side.FRONT, range, split));
                mains.map(Placed::ratio).forEach(ladder::add);
                if (range.equals("low")) {
                    ladder.add(at("L-R-sleeve", Side.FRONT, range, split).ratio());
                }
            }
        }
        ladder.sort(Comparator.reverseOrder());
        assertEquals(18, ladder.size());
        for (int rung = 1; rung < ladder.size(); rung++) {
            Fraction step = ladder.get(rung - 1).over(ladder.get(rung));
            assertTrue(
                    step.compareTo(Fraction.of(11, 10)) > 0 && step.compareTo(Fraction.of(5, 4)) < 0, ladder::toString);
        }
    }

    /** Range and splitter go on without the gear lever: no drive, whatever they do. */
    @Test
    void withTheGearLeverInNeutralNothingDrives() {
        RANGES.keySet()
                .forEach(range -> SPLITS.keySet()
                        .forEach(split -> assertEquals(
                                Outcome.NEUTRAL,
                                Placed.of("heron")
                                        .with("range", range)
                                        .with("splitter", split)
                                        .outcome())));
    }

    @Test
    void theTwoCountershaftsShareEqually() {
        Placed first = at("1-2-sleeve", Side.REAR, "low", "slow");
        assertTrue(first.torques().shareIsAssumed());
        Fraction left = first.torque("mesh slow-drive/left-slow", "left-slow");
        assertEquals(left, first.torque("mesh slow-drive/right-slow", "right-slow"));
        assertEquals(Fraction.of(51, 42).over(Fraction.of(2)), left.absolute());
        assertEquals(first.torque("mesh first/left-first", "first"), first.torque("mesh first/right-first", "first"));
    }

    /** In the low range the case bears what the output gives beyond the main shaft: 3 parts of 4, by the ring. */
    @Test
    void theCaseHoldsTheRingWithThreeTimesTheTorqueOfTheSun() {
        Placed fourth = at("3-4-sleeve", Side.FRONT, "low", "fast");
        assertEquals(
                Fraction.of(72, 24),
                fourth.torque("held case-dogs", "case-dogs").absolute());
        assertEquals(Fraction.ZERO, fourth.speed("range-ring"));
    }

    /** Two places of one section at once lock it; so does the range held and coupled together. */
    @Test
    void twoGearsAtOnceLock() {
        Placed two = at("1-2-sleeve", Side.REAR, "low", "slow").with("3-4-sleeve", Side.REAR);
        assertEquals(Outcome.LOCKED, two.outcome());
    }

    private static Placed at(String sleeve, Side side, String range, String split) {
        return Placed.of("heron").with(sleeve, side).with("range", range).with("splitter", split);
    }
}
