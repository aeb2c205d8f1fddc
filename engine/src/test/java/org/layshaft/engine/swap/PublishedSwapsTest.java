package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing;
import org.layshaft.engine.road.RollingCircumference;
import org.layshaft.engine.road.RollingConvention;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.road.TyreSize;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.DrivePath.Stage;
import org.layshaft.engine.teeth.InputTorque;
import org.layshaft.engine.teeth.Thrust;
import org.layshaft.engine.teeth.Turn;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** Exchanges that people have asked about and been answered, row by row. */
class PublishedSwapsTest {
    /** 36-inch tyres on a truck that had 30-inch ones and an axle of 3.08: 3.696 gives back the old speed, 3.73 is there. */
    @Test
    void s001_theAxleForLargerTyres() {
        AxleForCruise axle = AxleForCruise.onOtherTyres(told("3.08"), told("30"), told("36"));
        assertEquals(told("3.696"), axle.exact());
        assertEquals(
                number("3.73"),
                axle.among(Stream.of("2.73", "3.08", "3.31", "3.55", "3.73", "4.10")
                                .map(PublishedSwapsTest::number)
                                .toList())
                        .value()
                        .orElseThrow()
                        .get(0)
                        .ratio());
    }

    /**
     * 65 mph at 2242 turns a minute before and 2263 after, by the rule mph × ratio × 336 / inches; the 336 is 336.14
     * rounded, half a part in a thousand.
     */
    @Test
    void s001_engineSpeedsAndReading() {
        int before = freeMm(30);
        int after = freeMm(36);
        Layout truck = Change.NONE
                .with(new OtherTyre.Rolling(before))
                .withAxleRatio(new BigDecimal("3.08"))
                .applyTo(Boxes.the("curlew"));
        Comparison changed = Comparison.of(
                truck,
                Change.NONE.with(new OtherTyre.Rolling(after)).withAxleRatio(new BigDecimal("3.73")),
                new Running(Optional.of(SpeedUnit.MPH.toKmh(Fraction.of(65))), Optional.empty(), Optional.empty()),
                Swaps.REASONER);
        GearComparison top = changed.gear("5");
        assertEquals(2242, rpm(top.before()), 0.0005 * 2242);
        assertEquals(2263, rpm(top.after()), 0.0005 * 2263);
        assertEquals(
                Telling.told(number("3.73").over(number("3.08")).times(Fraction.of(before, after))),
                changed.speedometer().then(SpeedometerChange::readForTrue));
    }

    /** Both axles of a 4x4 must get the same ratio. */
    @Test
    void s001_bothAxles() {
        Comparison rear = Swaps.compare("ibis", Map.of("rear-axle-ring-gear", 41));
        assertFalse(rear.gateHolds());
        assertTrue(rear.axlesAfter().stream().noneMatch(TiedAxles::match));
        assertTrue(Swaps.compare("ibis", Map.of("rear-axle-ring-gear", 41, "front-axle-ring-gear", 41))
                .gateHolds());
    }

    /** Driven teeth = 8 × 661 × 3.00 / 1000 = 15.9, so 16. */
    @Test
    void s008_theDrivenGearOfTheSpeedometer() {
        DrivenGears gears = DrivenGears.of(Telling.told(8), told("661"), told("3.00"), told("1000"));
        assertEquals(told("15.864"), gears.exact());
        DrivenGears.Choice nearest = gears.among(
                        IntStream.rangeClosed(14, 22).boxed().toList())
                .value()
                .orElseThrow()
                .get(0);
        assertEquals(16, nearest.teeth());
        assertEquals(number("-0.85"), nearest.errorPercent());
        assertEquals(
                List.of("the driving gear is missing", "the axle ratio is missing"),
                DrivenGears.of(
                                Telling.missing("the driving gear"),
                                told("661"),
                                Telling.missing("the axle ratio"),
                                told("1000"))
                        .among(List.of(16))
                        .because());
    }

    /** A front axle of 4.533 and a rear one of 3.384 behind 0.537 do not agree: 0.537 × 3.384 is 1.82, and a stage is missing. */
    @Test
    void s015_twoAxlesThatDoNotReconcile() {
        DrivePath front = new DrivePath("the way to the front", List.of(stage("the front axle", "4.533")));
        DrivePath rear = new DrivePath(
                "the way to the rear", List.of(stage("the transfer unit", "0.537"), stage("the rear axle", "3.384")));
        TwoPaths paths = new TwoPaths(front, rear);
        assertEquals(told("4.533"), front.product());
        assertEquals(1.82, rear.product().value().orElseThrow().toDouble(), 0.005);
        assertEquals(Telling.told(false), paths.agree(number("0.01")));
        assertEquals(number("4.533").over(number("1.817208")), paths.stageMissingFromOther());
        TwoPaths withAStage = new TwoPaths(
                front,
                new DrivePath(
                        rear.name(),
                        Stream.concat(
                                        rear.stages().stream(),
                                        Stream.of(new Stage("the bevel pair of the transfer unit", Optional.empty())))
                                .toList()));
        assertEquals(
                Optional.of("cannot be told, the ratio of the bevel pair of the transfer unit is missing"),
                withAStage.agree(number("0.01")).whyNot());
        assertEquals(rear.product(), Telling.told(withAStage.other().productOfStated()));
    }

    /** Drops of 39, 24, 19; of 39, 24, 25; of 25, 22, 22 per cent: (higher − lower) / higher. */
    @ParameterizedTest
    @CsvSource({
        "2.64 1.61 1.23 1.00, 39 24 19", //
        "2.88 1.75 1.33 1.00, 39 24 25",
        "2.20 1.64 1.28 1.00, 25 22 22"
    })
    void s017_closeOrWide(String ratios, String drops) {
        Map<String, Fraction> gears = new LinkedHashMap<>();
        Arrays.stream(ratios.split(" ")).forEach(ratio -> gears.put(String.valueOf(gears.size() + 1), number(ratio)));
        assertEquals(
                Arrays.stream(drops.split(" ")).map(Long::valueOf).toList(),
                new Gearing(gears, Optional.empty())
                        .steps().stream()
                                .map(step -> Math.round(100 * step.drop().toDouble()))
                                .toList());
    }

    /** The ring gear on the other side of the pinion: trains and thrusts stay, only the axles turn the other way. */
    @Test
    void s034_theRingGearOnTheOtherSide() {
        Layout sandpiper = Boxes.the("sandpiper");
        Comparison across =
                Comparison.of(sandpiper, Change.NONE.withCrownAcross("ring-gear"), Swaps.HUNDRED_NM, Swaps.REASONER);
        assertTrue(across.gateHolds() && across.namesHold() && across.interlockHolds());
        assertEquals(6, across.gears().size());
        for (GearComparison gear : across.gears()) {
            assertTrue(gear.isTurnedRound());
            assertEquals(Optional.of(Fraction.ONE), gear.factor());
            assertEquals(
                    gear.before().orElseThrow().meshes(),
                    gear.after().orElseThrow().meshes());
            assertFalse(gear.thrusts().isEmpty());
            for (ThrustComparison thrust : gear.thrusts()) {
                assertEquals(thrust.before(), thrust.after(), thrust.shaft());
            }
        }
        Motion was = motion(across.before());
        Motion is = motion(across.after());
        List<String> turned = was.speeds().keySet().stream()
                .filter(body -> !was.speedOf(body).equals(is.speedOf(body)))
                .sorted()
                .toList();
        assertEquals(
                List.of(
                        "differential",
                        "left wheel",
                        "left-half-shaft",
                        "right wheel",
                        "right-half-shaft",
                        "ring-gear"),
                turned.stream().filter(body -> !body.equals("road")).toList());
        turned.forEach(body -> assertEquals(
                was.speedOf(body).orElseThrow().negated(), is.speedOf(body).orElseThrow()));
    }

    /** Turning the whole box backwards instead is doubted: the thrusts reverse. */
    @Test
    void s034_theWholeBoxBackwards() {
        Running backwards = new Running(
                Optional.empty(), Optional.empty(), Optional.of(new InputTorque(Fraction.of(100), Turn.ANTICLOCKWISE)));
        Layout sandpiper = Boxes.the("sandpiper");
        GearComparison asMeant = Comparison.of(sandpiper, Change.NONE, Swaps.HUNDRED_NM, Swaps.REASONER)
                .gear("2");
        GearComparison turned =
                Comparison.of(sandpiper, Change.NONE, backwards, Swaps.REASONER).gear("2");
        Thrust was = input(asMeant);
        Thrust is = input(turned);
        assertEquals(was.newtons(), is.newtons(), 1e-9);
        assertEquals(was.toward().map(Side::opposite), is.toward());
        assertTrue(was.newtons() > 0);
    }

    private static Thrust input(GearComparison gear) {
        return gear.thrusts().stream()
                .filter(thrust -> thrust.shaft().equals("input"))
                .findFirst()
                .flatMap(thrust -> thrust.after().value())
                .orElseThrow();
    }

    private static Motion motion(Installed installed) {
        return installed.box().gears().get(0).motion();
    }

    private static double rpm(Optional<GearFigures> figures) {
        return figures.orElseThrow().rpmAtCruise().value().orElseThrow().toDouble();
    }

    private static int freeMm(int inches) {
        TyreSize tyre = new TyreSize(inches + " in", Fraction.of(254L * inches, 10), TyreSize.Build.RADIAL);
        return RollingCircumference.of(tyre, RollingConvention.FREE).mm();
    }

    private static Stage stage(String name, String ratio) {
        return new Stage(name, Optional.of(number(ratio)));
    }

    private static Telling<Fraction> told(String number) {
        return Telling.told(number(number));
    }

    private static Fraction number(String written) {
        return Fraction.of(new BigDecimal(written));
    }
}
