package org.layshaft.engine.road;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * What has been changed on a vehicle whose speedometer read truly before; empty where nothing has.
 *
 * @param tyre rolling circumference of the wheels that the reading depends on, in mm
 * @param axle axle ratio
 * @param drive turns that the speedometer's drive gears give for one turn of the shaft they are on: driving teeth over
 *     driven teeth
 * @param readAt where the reading is taken, where that is stated
 */
public record SpeedometerChange(
        Optional<Change> tyre, Optional<Change> axle, Optional<Change> drive, Optional<ReadAt> readAt) {

    /** A number before and after. */
    public record Change(Fraction before, Fraction after) {

        /** Throws {@link ImpossibleFactsException} where either is not more than 0. */
        public Change {
            new Objections()
                    .unlessPositive(Optional.of(before), "the figure before the change")
                    .unlessPositive(Optional.of(after), "the figure after the change")
                    .refuse();
        }

        private Fraction growth() {
            return after.over(before);
        }
    }

    /** From one vehicle to what has become of it by another tyre or another axle ratio. */
    public static Telling<SpeedometerChange> between(Vehicle before, Vehicle after) {
        Telling<Optional<Change>> tyre =
                before.tyre().with(after.tyre(), (old, now) -> changed(old.exactMm(), now.exactMm()));
        return tyre.with(
                axle(before.gearing().behind(), after.gearing().behind()),
                (wheels, ratio) -> new SpeedometerChange(wheels, ratio, Optional.empty(), after.readAt()));
    }

    private static Telling<Optional<Change>> axle(Optional<Fraction> before, Optional<Fraction> after) {
        return before.equals(after)
                ? Telling.told(Optional.empty())
                : Telling.of(before, "the axle ratio before")
                        .with(Telling.of(after, "the axle ratio"), SpeedometerChange::changed);
    }

    private static Optional<Change> changed(Fraction before, Fraction after) {
        return before.equals(after) ? Optional.empty() : Optional.of(new Change(before, after));
    }

    /** What is read for each km/h of true speed. */
    public Telling<Fraction> readForTrue() {
        Fraction fewerWheelTurns = tyre.map(Change::growth).orElse(Fraction.ONE).inverse();
        Fraction moreFromDrive = drive.map(Change::growth).orElse(Fraction.ONE);
        return fromAxle().map(fewerWheelTurns.times(moreFromDrive)::times);
    }

    /** How much too high it reads, in per cent of the true speed; less than 0 where too low. */
    public Telling<Fraction> errorPercent() {
        return readForTrue().map(read -> read.minus(Fraction.ONE).times(Fraction.of(100)));
    }

    /** Teeth of the driven gear that would put the reading right, in place of one with so many; seldom whole. */
    public Telling<Fraction> drivenTeethToPutRight(int drivenTeethNow) {
        return readForTrue().map(Fraction.of(drivenTeethNow)::times);
    }

    private Telling<Fraction> fromAxle() {
        if (axle.isEmpty()) {
            return Telling.told(Fraction.ONE);
        }
        Fraction growth = axle.get().growth();
        return Telling.of(readAt, "where the speed is read")
                .map(place -> place == ReadAt.GEARBOX_OUTPUT ? growth : Fraction.ONE);
    }
}
