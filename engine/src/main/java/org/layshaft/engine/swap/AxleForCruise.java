package org.layshaft.engine.swap;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * Axle ratios for an engine speed at a road speed. Where two axles are driven, both must get it.
 *
 * @param exact the ratio that would do it exactly
 */
public record AxleForCruise(Telling<Fraction> exact) {

    /**
     * For the old engine speed on other tyres.
     *
     * @param axleRatio that there is
     * @param rollsBeforeMm what a wheel rolled in one turn, in mm, or in any one unit with the other
     * @param rollsAfterMm what it rolls now
     */
    public static AxleForCruise onOtherTyres(
            Telling<Fraction> axleRatio, Telling<Fraction> rollsBeforeMm, Telling<Fraction> rollsAfterMm) {
        return new AxleForCruise(axleRatio.with(rollsBeforeMm, Fraction::over).with(rollsAfterMm, Fraction::times));
    }

    /** For this engine speed in this gear at this road speed, behind the box and on the tyres that there are. */
    public static AxleForCruise at(Vehicle vehicle, String gear, Fraction kmh, Fraction rpm) {
        return new AxleForCruise(Telling.of(vehicle.gearing().behind(), "the axle ratio")
                .with(
                        vehicle.speeds().rpmAt(gear, kmh),
                        (axle, now) -> axle.times(rpm).over(now)));
    }

    /**
     * Those that there are, the nearest first.
     *
     * @throws org.layshaft.engine.stated.ImpossibleFactsException for a ratio that is not more than 0
     */
    public Telling<List<Choice>> among(Collection<Fraction> ratios) {
        Objections objections = new Objections();
        ratios.forEach(ratio -> objections.unlessPositive(Optional.of(ratio), "an axle ratio to choose from"));
        objections.refuse();
        return exact().map(exact -> ratios.stream()
                .distinct()
                .map(ratio -> new Choice(ratio, ratio.over(exact)))
                .sorted(Comparator.comparing(
                        choice -> choice.rpmForOld().minus(Fraction.ONE).absolute()))
                .toList());
    }

    /**
     * An axle ratio that there is.
     *
     * @param rpmForOld engine speed for each that there was at the same road speed
     */
    public record Choice(Fraction ratio, Fraction rpmForOld) {}
}
