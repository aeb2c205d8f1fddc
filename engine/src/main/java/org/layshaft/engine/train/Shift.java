package org.layshaft.engine.train;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;

/**
 * What a blocking ring has to bring about in a shift, the vehicle rolling on and the clutch released. All for one turn of
 * the output.
 *
 * @param inputBefore turns of the input in the gear that is left
 * @param inputAfter turns of the input in the gear that is entered
 * @param difference what the sleeve turns faster than the gear beside it as the shift begins, to be brought to zero
 */
public record Shift(Fraction inputBefore, Fraction inputAfter, Fraction difference) {

    /**
     * Empty where the gear that is left does not drive, or where input and output do not fix both speeds, or the input
     * does not turn the gear beside the sleeve.
     *
     * @param from the train in the gear that is left
     * @param between the train with neither gear engaged
     * @param sleeve id of the sleeve that moves
     * @param to id of what it is to couple
     */
    public static Optional<Shift> of(Train from, Train between, String sleeve, String to) {
        Speed difference = Turning.of(between, Condition.ROLLING).difference(sleeve, to);
        if (difference.free() || difference.ofEngine().isZero()) {
            return Optional.empty();
        }
        Fraction after = difference.ofRoad().over(difference.ofEngine()).negated();
        return TrainSolver.solve(from)
                .ratio()
                .map(before -> new Shift(before, after, difference.at(before, Fraction.ONE)));
    }
}
