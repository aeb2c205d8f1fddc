package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Side;

/** Boxes with input and output in line: where the constant pair stands, where the sleeves sit, gears that slide. */
class InlineFamiliesTest {
    @ParameterizedTest
    @CsvSource({
        "1-2-sleeve, FRONT, 51/21 45/27",
        "1-2-sleeve, REAR, 42/30 45/27",
        "3-4-sleeve, FRONT, 33/39 45/27",
        "3-4-sleeve, REAR, 1/1",
        "5-R-sleeve, FRONT, 23/49 45/27",
        "5-R-sleeve, REAR, -41/18 45/27"
    })
    void theConstantPairOfRedshankIsTheLastOfEachGear(String sleeve, Side side, String pairs) {
        assertEquals(
                Pairs.ratio(pairs), Placed.of("redshank").with(sleeve, side).ratio());
    }

    /** With the constant pair in front the cluster stands still with the input; with it behind, with the output. */
    @Test
    void theClusterOfRedshankTurnsWithTheOutput() {
        Placed neutral = Placed.of("redshank");
        assertTrue(neutral.motion().speedOf("countershaft").isEmpty());
        assertEquals(Fraction.of(-45, 27), neutral.with("3-4-sleeve", Side.REAR).speed("countershaft"));
        assertEquals(
                Set.of("input", "3-4-sleeve", "output-gear", "output"),
                neutral.with("3-4-sleeve", Side.REAR).motion().carrying());
    }

    @ParameterizedTest
    @CsvSource({
        "1-2-sleeve, REAR, 42/24 45/21",
        "1-2-sleeve, FRONT, 42/24 37/29",
        "3-4-sleeve, REAR, 42/24 29/37",
        "3-4-sleeve, FRONT, 1/1",
        "5-R-sleeve, REAR, 42/24 21/45",
        "5-R-sleeve, FRONT, -42/24 35/18"
    })
    void whimbrelHasSleevesOnBothShafts(String sleeve, Side side, String pairs) {
        assertEquals(
                Pairs.ratio(pairs), Placed.of("whimbrel").with(sleeve, side).ratio());
    }

    /** The needles under a gear turn in it while it is not engaged, on whichever shaft it sits. */
    @Test
    void fifthOfWhimbrelTurnsOnTheCountershaftWithTheOutput() {
        Placed first = Placed.of("whimbrel").with("1-2-sleeve", Side.REAR);
        Fraction output = first.speed("output");
        assertEquals(output.times(Fraction.of(-21, 45)), first.speed("fifth"));
        assertEquals(Fraction.of(-24, 42), first.speed("countershaft"));
    }

    @ParameterizedTest
    @CsvSource({
        "first, FRONT, 30/18 34/14",
        "second, FRONT, 30/18 28/20",
        "third, REAR, 30/18 23/25",
        "third, FRONT, 1/1",
        "first, REAR, -30/18 34/13"
    })
    void everyGearOfPhalaropeSlides(String gear, Side side, String pairs) {
        assertEquals(Pairs.ratio(pairs), Placed.of("phalarope").with(gear, side).ratio());
    }

    @Test
    void twoSlidingGearsOfPhalaropeInMeshAtOnceLockIt() {
        Placed both = Placed.of("phalarope").with("first", Side.FRONT).with("second", Side.FRONT);
        assertEquals(Outcome.LOCKED, both.outcome());
    }
}
