package org.layshaft.engine.sound;

import java.math.BigDecimal;
import org.layshaft.engine.exact.Fraction;

/**
 * How often something repeats for one turn of the input.
 *
 * @param perTurn not below 0
 * @param exact whether that is the very number; else it is the nearest double to one that is not rational
 */
public record Order(Fraction perTurn, boolean exact) {
    private static final Fraction SECONDS_A_MINUTE = Fraction.of(60);

    static Order exactly(Fraction perTurn) {
        return new Order(perTurn.absolute(), true);
    }

    /** How often in a second. */
    public Fraction hz(Fraction inputRpm) {
        return perTurn.times(inputRpm).over(SECONDS_A_MINUTE);
    }

    Order times(Fraction factor) {
        return new Order(perTurn.times(factor.absolute()), exact);
    }

    Order times(int factor) {
        return times(Fraction.of(factor));
    }

    /** So many times the other beside this one; a band that would lie below zero is heard as far above it. */
    Order beside(Order other, int times) {
        return new Order(perTurn.plus(other.perTurn.times(Fraction.of(times))).absolute(), exact && other.exact);
    }

    boolean isZero() {
        return perTurn.isZero();
    }

    /** The number that a double stands for, exactly. */
    static Fraction standing(double number) {
        return Fraction.of(new BigDecimal(number));
    }
}
