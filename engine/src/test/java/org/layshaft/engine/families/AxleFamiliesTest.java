package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.LimitedSlip;

/** Axles, each with its pinion shaft as input. */
class AxleFamiliesTest {
    @ParameterizedTest
    @CsvSource({"knot, 43/11", "stint, 43/11", "ruff, 39/8", "snipe, 41/11", "woodcock, 37/9", "bittern, 37/12 32/15"})
    void forwardAtItsRatio(String axle, String pairs) {
        assertEquals(Pairs.ratio(pairs), Placed.of(axle).ratio());
    }

    /** The pairs at the hubs multiply the torque once more, after the differential has halved it. */
    @Test
    void theHalfShaftsOfBitternCarryWhatIsLeftToTheHubs() {
        Placed axle = Placed.of("bittern");
        Fraction half = Pairs.ratio("37/12").over(Fraction.of(2));
        assertEquals(
                half,
                axle.torque("differential differential", "left-half-shaft").absolute());
        assertEquals(
                half.times(Fraction.of(32, 15)),
                axle.torque("road left-hub", "left-hub").absolute());
        assertEquals(Fraction.of(-12, 37), axle.speed("left-half-shaft"));
    }

    @ParameterizedTest
    @CsvSource({"open, false", "locked, true"})
    void onlyTheLockLeavesOpenHowTheWheelsOfRuffShare(String lock, boolean assumed) {
        assertEquals(
                assumed, Placed.of("ruff").with("axle-lock", lock).torques().shareIsAssumed());
    }

    @Test
    void whatHoldsTheSidesOfSnipeAndWoodcockTogetherIsTold() {
        assertEquals(new LimitedSlip(OptionalDouble.of(80), OptionalDouble.of(2.2)), slip("snipe"));
        assertEquals(new LimitedSlip(OptionalDouble.empty(), OptionalDouble.of(3.5)), slip("woodcock"));
    }

    private static LimitedSlip slip(String axle) {
        return Placed.of(axle)
                .layout()
                .the(Differential.class, "differential")
                .limitedSlip()
                .orElseThrow();
    }
}
