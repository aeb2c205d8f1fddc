package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;

/** What is expected is reckoned by hand. */
class ComparisonTest {
    private static final Fraction AXLE = Fraction.of(41, 10);
    /** 195/75 R16: 698.9 mm across, times 3.05. */
    private static final Fraction TYRE_MM = Fraction.of(2132);

    static Stream<Layout> layouts() {
        return Boxes.every().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void nothingChangedIsNothingToSee(Layout layout) {
        Comparison same = Comparison.of(layout, Change.NONE, Swaps.HUNDRED_NM, Swaps.REASONER);
        assertFalse(same.gears().isEmpty());
        for (GearComparison gear : same.gears()) {
            assertEquals(gear.before(), gear.after());
            assertEquals(Optional.of(Fraction.ONE), gear.factor());
            assertFalse(gear.isTurnedRound());
            assertTrue(gear.thrusts().stream()
                    .noneMatch(thrust -> thrust.reversed().value().orElse(false)));
        }
        assertTrue(same.gateHolds() && same.namesHold() && same.interlockHolds());
        assertEquals(List.of(), same.pairs());
        assertEquals(same.axlesBefore(), same.axlesAfter());
        assertTrue(same.axlesAfter().stream().allMatch(TiedAxles::match));
        assertEquals(Telling.told(Fraction.ZERO), same.speedometer().then(change -> change.errorPercent()));
    }

    @Test
    void aLongerAxleOnTheRoad() {
        Comparison axle = Comparison.of(
                Boxes.the("curlew"),
                Change.NONE.withAxleRatio(new BigDecimal("3.7")),
                Swaps.HUNDRED_NM,
                Swaps.REASONER);
        GearComparison fifth = axle.gear("5");
        Fraction wheelRpm = Fraction.of(90 * 1_000_000L, 60).over(TYRE_MM);
        assertEquals(Telling.told(wheelRpm.times(Fraction.of(-4, 10))), fifth.rpmMoreAtCruise());
        assertEquals(
                Telling.told(wheelRpm.times(AXLE)), fifth.before().orElseThrow().rpmAtCruise());
        Fraction third = Fraction.of(47 * 34, 24 * 37);
        assertEquals(
                Telling.told(Fraction.of(100).times(third).times(AXLE).times(Fraction.of(92, 100))),
                axle.gear("3").before().orElseThrow().wheelTorqueNm());
        assertEquals(
                Telling.told(
                        Fraction.of(100).times(third).times(Fraction.of(37, 10)).times(Fraction.of(92, 100))),
                axle.gear("3").after().orElseThrow().wheelTorqueNm());
        // read at the gearbox, the shaft turns less for each km: it reads too low
        assertEquals(
                Telling.told(Fraction.of(37, 41).minus(Fraction.ONE).times(Fraction.of(100))),
                axle.speedometer().then(change -> change.errorPercent()));
    }

    @Test
    void aThirdNearerToSecond() {
        Comparison nearer = Swaps.compare("curlew", Map.of("third", 36, "cluster-third", 35));
        GearFigures second = nearer.gear("2").after().orElseThrow();
        Fraction ofSecond = Fraction.of(43, 28);
        Fraction ofThird = Fraction.of(36, 35);
        assertEquals(ofSecond.over(ofThird), second.road().step().orElseThrow().ratio());
        assertEquals(
                Fraction.ONE.minus(ofThird.over(ofSecond)),
                second.road().step().orElseThrow().drop());
        assertEquals(
                Optional.of(Telling.told(Fraction.of(3000).times(ofThird).over(ofSecond))), second.rpmAfterShiftUp());
        assertEquals(Optional.empty(), nearer.gear("5").after().orElseThrow().rpmAfterShiftUp());
    }

    @Test
    void teethMeetLessOften() {
        Comparison other = Swaps.compare("curlew", Map.of("third", 37, "cluster-third", 34));
        GearComparison third = other.gear("3");
        String mesh = "third/cluster-third";
        assertEquals(
                Map.of(mesh, Fraction.of(24 * 37, 47), "input-gear/cluster-driven", Fraction.of(24)),
                third.before().orElseThrow().meshes());
        GearFigures after = third.after().orElseThrow();
        assertEquals(Fraction.of(24 * 34, 47), after.meshes().get(mesh));
        assertEquals(after.rpmAtCruise().map(rpm -> rpm.times(Fraction.of(24 * 34, 47 * 60))), after.hzAtCruise(mesh));
        assertEquals(
                List.of(mesh),
                other.pairs().stream().map(pair -> pair.mesh().id()).toList());
        assertEquals(
                Optional.of(
                        "cannot be told, the tip diameters of third gear and cluster third gear are missing, their centre distance is missing"),
                other.pairs().get(0).contactAfter().whyNot());
        assertEquals(List.of(), other.pairs().get(0).unlike());
    }

    @Test
    void whatIsNotStatedIsNamed() {
        Layout avocet = Boxes.the("avocet");
        GearComparison second = Comparison.of(
                        avocet, Swaps.change(avocet, Map.of("second", 28)), Running.NOT_STATED, Swaps.REASONER)
                .gear("2");
        GearFigures figures = second.after().orElseThrow();
        assertEquals(
                List.of("the cruising speed is missing"), figures.rpmAtCruise().because());
        assertEquals(
                List.of("the engine speed to shift at is missing"),
                figures.rpmAfterShiftUp().orElseThrow().because());
        assertEquals(
                List.of(
                        "the torque on the input is missing",
                        "the axle ratio is missing",
                        "the efficiency from engine to wheels is missing"),
                figures.wheelTorqueNm().because());
        assertEquals(
                List.of("the torque on the input is missing"), figures.forces().because());
    }
}
