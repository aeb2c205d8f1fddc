package org.layshaft.engine.road;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * Front and rear axle of a four-wheel drive whose propeller shafts are locked together at equal speed.
 *
 * @param frontAxle turns of the front propeller shaft for one of the wheels
 * @param rearAxle turns of the rear propeller shaft for one of the wheels
 */
public record AxleMismatch(
        Optional<Fraction> frontAxle,
        Telling<RollingCircumference> frontTyre,
        Optional<Fraction> rearAxle,
        Telling<RollingCircumference> rearTyre) {
    private static final Fraction MM_IN_KM = Fraction.of(1_000_000);
    private static final Fraction HUNDRED = Fraction.of(100);

    /** Throws {@link ImpossibleFactsException} for an axle ratio that is not more than 0. */
    public AxleMismatch {
        new Objections()
                .unlessPositive(frontAxle, "the front axle ratio")
                .unlessPositive(rearAxle, "the rear axle ratio")
                .refuse();
    }

    /** Turns that each km straight ahead asks of the front propeller shaft, if its wheels only roll. */
    public Telling<Fraction> frontTurnsPerKm() {
        return Telling.of(frontAxle, "the front axle ratio").with(frontTyre, AxleMismatch::turnsPerKm);
    }

    /** The same of the rear propeller shaft. */
    public Telling<Fraction> rearTurnsPerKm() {
        return Telling.of(rearAxle, "the rear axle ratio").with(rearTyre, AxleMismatch::turnsPerKm);
    }

    /** How much faster the front propeller shaft would turn, in per cent of the rear one; less than 0 where slower. */
    public Telling<Fraction> percent() {
        return frontTurnsPerKm()
                .with(
                        rearTurnsPerKm(),
                        (front, rear) -> front.over(rear).minus(Fraction.ONE).times(HUNDRED));
    }

    /** Turns that the shafts wind up against each other in each km, while no tyre gives way; without sign. */
    public Telling<Fraction> windUpTurnsPerKm() {
        return frontTurnsPerKm()
                .with(rearTurnsPerKm(), (front, rear) -> front.minus(rear).absolute());
    }

    /** What the tyres do about it; empty where the axles match. */
    public Telling<Optional<ForcedSlip>> forcedSlip() {
        return frontTurnsPerKm().with(rearTurnsPerKm(), AxleMismatch::slip);
    }

    private static Optional<ForcedSlip> slip(Fraction front, Fraction rear) {
        int order = front.compareTo(rear);
        if (order == 0) {
            return Optional.empty();
        }
        // the axle whose shaft asks for more turns gets too few, and is dragged along
        return Optional.of(
                order > 0
                        ? new ForcedSlip(
                                false,
                                Fraction.ONE.minus(rear.over(front)),
                                front.over(rear).minus(Fraction.ONE))
                        : new ForcedSlip(
                                true,
                                Fraction.ONE.minus(front.over(rear)),
                                rear.over(front).minus(Fraction.ONE)));
    }

    private static Fraction turnsPerKm(Fraction axle, RollingCircumference tyre) {
        return axle.times(MM_IN_KM).over(tyre.exactMm());
    }

    /**
     * What two locked axles that do not match force on their tyres; how it is shared between them is decided by their
     * grip, and lies between the two figures.
     *
     * @param frontPushes whether the front wheels are driven too fast and the rear ones held back, or the other way round
     * @param heldBack the part of the way that the slower axle's tyres slide without turning, if those of the other only
     *     roll
     * @param spunOn the part of the way that the faster axle's tyres turn too much, if those of the other only roll
     */
    public record ForcedSlip(boolean frontPushes, Fraction heldBack, Fraction spunOn) {}
}
