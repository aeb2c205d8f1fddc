package org.layshaft.engine.swap;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;

/**
 * Driven gears that let a speedometer read truly.
 *
 * @param exact teeth that would do it exactly, seldom a whole number
 */
public record DrivenGears(Telling<Fraction> exact) {

    /**
     * From the gearing, for a speedometer driven off the output of the gearbox.
     *
     * @param drivingTeeth of the gear on the output shaft
     * @param wheelTurns of a wheel on a mile, or on a kilometre
     * @param axleRatio turns of the output for one of the wheels
     * @param cableTurns that the speedometer wants on the same way
     */
    public static DrivenGears of(
            Telling<Integer> drivingTeeth,
            Telling<Fraction> wheelTurns,
            Telling<Fraction> axleRatio,
            Telling<Fraction> cableTurns) {
        return new DrivenGears(drivingTeeth
                .map(teeth -> Fraction.of(teeth))
                .with(wheelTurns, Fraction::times)
                .with(axleRatio, Fraction::times)
                .with(cableTurns, Fraction::over));
    }

    /** In place of a driven gear with which the speedometer read truly before a change. */
    public static DrivenGears after(Telling<SpeedometerChange> change, int drivenTeethNow) {
        return new DrivenGears(change.then(changed -> changed.drivenTeethToPutRight(drivenTeethNow)));
    }

    /** Those that there are, the nearest reading first. */
    public Telling<List<Choice>> among(Collection<Integer> teeth) {
        return exact.map(right -> teeth.stream()
                .distinct()
                .map(number -> new Choice(
                        number,
                        right.over(Fraction.of(number)).minus(Fraction.ONE).times(Fraction.of(100))))
                .sorted(Comparator.comparing(choice -> choice.errorPercent().absolute()))
                .toList());
    }

    /**
     * A driven gear that there is.
     *
     * @param errorPercent how much too high the speedometer then reads; less than 0 where too low
     */
    public record Choice(int teeth, Fraction errorPercent) {}
}
