package org.layshaft.engine.sound;

import java.math.BigInteger;
import org.layshaft.engine.exact.Fraction;

/**
 * How the teeth of a pair come to meet.
 *
 * @param meshing how often teeth meet
 */
record Pairing(int firstTeeth, int secondTeeth, Order meshing) {

    /** The product of the prime factors that the two numbers of teeth have in common: so many phases to assemble them in. */
    int phases() {
        return BigInteger.valueOf(firstTeeth)
                .gcd(BigInteger.valueOf(secondTeeth))
                .intValueExact();
    }

    /** How often the same two teeth meet again. */
    Order huntingTooth() {
        return meshing.times(Fraction.of(phases(), (long) firstTeeth * secondTeeth));
    }

    Order assemblyPhase() {
        return meshing.times(Fraction.of(1, phases()));
    }
}
