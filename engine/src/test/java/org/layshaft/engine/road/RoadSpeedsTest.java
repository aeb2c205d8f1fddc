package org.layshaft.engine.road;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing.Step;
import org.layshaft.engine.road.RoadSpeeds.Shift;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;

class RoadSpeedsTest {
    private static final Fraction AXLE = Fraction.of(39, 10);
    private static final Map<String, Fraction> FOUR_AND_REVERSE =
            ratios("1", "4", "2", "2", "3", "1.25", "4", "1", "R", "-4");
    private final Gearing gearing = new Gearing(FOUR_AND_REVERSE, Optional.of(AXLE));
    private final RoadSpeeds speeds = new RoadSpeeds(gearing, Telling.told(RollingCircumference.stated(1950)));

    /** One turn of the wheels is 1.95 m: 1000/3.9 turns a minute in fourth are 500 m a minute, 30 km/h. */
    @Test
    void speedPerThousand() {
        assertEquals(Telling.told(Fraction.of(30)), speeds.kmhPer1000Rpm("4"));
        assertEquals(Telling.told(Fraction.of(15, 2)), speeds.kmhPer1000Rpm("1"));
        assertEquals(Telling.told(Fraction.of(15, 2)), speeds.kmhPer1000Rpm("R"));
        assertEquals(Telling.told(Fraction.of(3000)), speeds.rpmAt("4", Fraction.of(90)));
        assertEquals(Telling.told(Fraction.of(90)), speeds.kmhAt("4", Fraction.of(3000)));
    }

    /** At 30 km/h the wheels of 1.95 m turn 256.4 times a minute, and the output 3.9 times as often. */
    @Test
    void theOutputFollowsTheRoadInAnyGear() {
        assertEquals(Telling.told(Fraction.of(1000)), speeds.outputRpmAt(Fraction.of(30)));
        RoadSpeeds bare = new RoadSpeeds(new Gearing(FOUR_AND_REVERSE, Optional.empty()), speeds.tyre());
        assertEquals(
                List.of("the axle ratio is missing"),
                bare.outputRpmAt(Fraction.of(30)).because());
    }

    @Test
    void overallRatiosAndSteps() {
        assertEquals(Telling.told(Fraction.of(78, 10)), gearing.overall("2"));
        assertEquals(
                List.of(
                        new Step("1", "2", Fraction.of(2)),
                        new Step("2", "3", Fraction.of(8, 5)),
                        new Step("3", "4", Fraction.of(5, 4))),
                gearing.steps());
        assertEquals(Fraction.of(3, 8), gearing.steps().get(1).drop());
    }

    @Test
    void shiftsUpAndDown() {
        assertEquals(Fraction.of(2500), gearing.rpmAfterShift("2", "3", Fraction.of(4000)));
        assertEquals(Fraction.of(4000), gearing.rpmAfterShift("3", "2", Fraction.of(2500)));
        assertEquals(
                Telling.told(new Shift("4", "2", Fraction.of(60), Fraction.of(2000), Fraction.of(4000))),
                speeds.shift("4", "2", Fraction.of(60)));
    }

    /**
     * M-19: an engine maker's application guide, edition 47, pages 12-18: mph = rpm × 60 / (axle × gear × tyre turns a
     * mile × auxiliary × drop box).
     */
    @Test
    void m19MilesAnHourByTyreTurnsAMile() {
        Fraction auxiliary = Fraction.of(128, 100);
        Fraction dropBox = Fraction.of(11, 10);
        Fraction axle = Fraction.of(456, 100);
        RollingCircumference tyre = RollingCircumference.stated(3218);
        Fraction turnsAMile = Fraction.of(1_609_344).over(Fraction.of(3218));
        RoadSpeeds truck = new RoadSpeeds(
                new Gearing(FOUR_AND_REVERSE, Optional.of(axle.times(auxiliary).times(dropBox))), Telling.told(tyre));
        Fraction rpm = Fraction.of(2100);
        Fraction byGuide = rpm.times(Fraction.of(60))
                .over(axle.times(Fraction.of(5, 4))
                        .times(turnsAMile)
                        .times(auxiliary)
                        .times(dropBox));
        assertEquals(Telling.told(byGuide), truck.kmhAt("3", rpm).map(SpeedUnit.MPH::fromKmh));
        assertEquals(Telling.told(rpm), truck.rpmAt("3", SpeedUnit.MPH.toKmh(byGuide)));
    }

    /**
     * A trade rule of thumb, rpm = mph × ratio × 336 / diameter in inches, which gives 2242 at 65 mph on 3.08 and 30
     * inches, and 2263 on 3.73 and 36. The true figure for 336 is 63360/(60 pi), 336.13.
     */
    @Test
    void ruleOfThumbWith336() {
        Fraction kmh = SpeedUnit.MPH.toKmh(Fraction.of(65));
        assertEquals(2242 * 336.135 / 336, number(direct("3.08", 30).rpmAt("4", kmh)), 1);
        assertEquals(2263 * 336.135 / 336, number(direct("3.73", 36).rpmAt("4", kmh)), 1);
    }

    /** As printed among a trade's worked questions: 2.78, 1.93, 1.36 and 1 on 3.07 and 26 inches; 0.6 m on 3.9. */
    @Test
    void speedsThatTheTradeReckons() {
        RoadSpeeds wide = new RoadSpeeds(
                new Gearing(
                        ratios("1", "2.78", "2", "1.93", "3", "1.36", "4", "1"), Optional.of(Fraction.of(307, 100))),
                Telling.told(free(26)));
        assertEquals(
                List.of("9.1", "13.1", "18.5", "25.2"),
                List.of("1", "2", "3", "4").stream()
                        .map(gear -> wide.kmhPer1000Rpm(gear).map(SpeedUnit.MPH::fromKmh))
                        .map(speed ->
                                "%.1f".formatted(speed.value().orElseThrow().toDouble()))
                        .toList());
        RoadSpeeds metric = new RoadSpeeds(gearing, Telling.told(RollingCircumference.stated(1885)));
        assertEquals("116", whole(metric.kmhAt("4", Fraction.of(4000))));
    }

    /** Close or wide, as the trade puts it: (higher − lower)/higher of neighbouring ratios, in whole per cent. */
    @Test
    void dropsThatTheTradeReckons() {
        assertEquals(List.of("39", "24", "19"), drops("2.64", "1.61", "1.23", "1.00"));
        assertEquals(List.of("25", "22", "22"), drops("2.20", "1.64", "1.28", "1.00"));
        assertEquals(List.of("39", "24", "25"), drops("2.88", "1.75", "1.33", "1.00"));
    }

    @Test
    void whatIsMissingIsSaid() {
        RoadSpeeds bare = new RoadSpeeds(
                new Gearing(FOUR_AND_REVERSE, Optional.empty()), Telling.missing("the tyre or rolling circumference"));
        assertEquals(
                Optional.of("cannot be told, the axle ratio is missing, the tyre or rolling circumference is missing"),
                bare.kmhPer1000Rpm("2").whyNot());
        assertEquals(3, bare.gearing().steps().size());
    }

    @Test
    void impossibleRatiosAreRefused() {
        ImpossibleFactsException refused = assertThrows(
                ImpossibleFactsException.class, () -> new Gearing(ratios("1", "0"), Optional.of(Fraction.of(-4))));
        assertEquals(
                List.of(
                        "The axle ratio is -4. It must be more than 0.",
                        "The ratio of gear 1 is 0. A gear drives, or is none."),
                refused.problems());
        assertThrows(IllegalArgumentException.class, () -> gearing.overall("5"));
    }

    private static RoadSpeeds direct(String axle, int diameterInches) {
        return new RoadSpeeds(
                new Gearing(ratios("4", "1"), Optional.of(Fraction.of(new BigDecimal(axle)))),
                Telling.told(free(diameterInches)));
    }

    private static RollingCircumference free(int diameterInches) {
        return RollingCircumference.of(TyreSize.read("%dx7.00-15".formatted(diameterInches)), RollingConvention.FREE);
    }

    private static List<String> drops(String first, String second, String third, String top) {
        return new Gearing(ratios("1", first, "2", second, "3", third, "4", top), Optional.empty())
                .steps().stream()
                        .map(step -> "%.0f".formatted(100 * step.drop().toDouble()))
                        .toList();
    }

    private static Map<String, Fraction> ratios(String... gearsAndRatios) {
        Map<String, Fraction> ratios = new LinkedHashMap<>();
        for (int i = 0; i < gearsAndRatios.length; i += 2) {
            ratios.put(gearsAndRatios[i], Fraction.of(new BigDecimal(gearsAndRatios[i + 1])));
        }
        return ratios;
    }

    private static String whole(Telling<Fraction> number) {
        return "%.0f".formatted(number(number));
    }

    private static double number(Telling<Fraction> number) {
        return number.value().orElseThrow().toDouble();
    }
}
