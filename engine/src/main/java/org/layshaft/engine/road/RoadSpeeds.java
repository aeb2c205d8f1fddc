package org.layshaft.engine.road;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;

/** Engine speed and road speed of one gearing on one tyre, clutch engaged, nothing slipping. */
public record RoadSpeeds(Gearing gearing, Telling<RollingCircumference> tyre) {
    private static final Fraction THOUSAND = Fraction.of(1000);
    /** Millimetres a minute in one km/h. */
    private static final Fraction MM_A_MINUTE = Fraction.of(1_000_000, 60);

    /** Road speed in km/h for each 1000 turns of the engine a minute. */
    public Telling<Fraction> kmhPer1000Rpm(String gear) {
        return kmhPerRpm(gear).map(THOUSAND::times);
    }

    public Telling<Fraction> kmhAt(String gear, Fraction rpm) {
        return kmhPerRpm(gear).map(rpm::times);
    }

    public Telling<Fraction> rpmAt(String gear, Fraction kmh) {
        return kmhPerRpm(gear).map(kmh::over);
    }

    /** Turns a minute of the box's output, whatever gear is in, or none. */
    public Telling<Fraction> outputRpmAt(Fraction kmh) {
        return Telling.of(gearing.behind(), "the axle ratio")
                .with(
                        tyre,
                        (behind, rolls) ->
                                kmh.times(MM_A_MINUTE).over(rolls.exactMm()).times(behind));
    }

    /** A shift, up or down, at a road speed. */
    public Telling<Shift> shift(String from, String to, Fraction kmh) {
        return rpmAt(from, kmh).with(rpmAt(to, kmh), (before, after) -> new Shift(from, to, kmh, before, after));
    }

    private Telling<Fraction> kmhPerRpm(String gear) {
        return gearing.overall(gear)
                .with(tyre, (overall, rolls) -> rolls.exactMm().over(overall).over(MM_A_MINUTE));
    }

    /** Engine speeds before and after a change of gear at one road speed. */
    public record Shift(String from, String to, Fraction kmh, Fraction rpmBefore, Fraction rpmAfter) {}
}
