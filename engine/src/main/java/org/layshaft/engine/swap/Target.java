package org.layshaft.engine.swap;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * What ratio of the box a wish comes to, without sign.
 *
 * @param least the lowest that meets it
 * @param most the highest that meets it
 * @param ideal the best
 * @param open whether the two bounds themselves do not meet it
 */
public record Target(Fraction least, Fraction most, Fraction ideal, boolean open) {

    /** Throws {@link org.layshaft.engine.stated.ImpossibleFactsException} for a part below 0, or of 1 and more. */
    static Target around(Fraction ideal, Fraction within) {
        new Objections()
                .unless(
                        within.signum() >= 0 && within.compareTo(Fraction.ONE) < 0,
                        "The wish may be missed by %s of the ratio. It must be at least 0 and below 1; 2 per cent is 0.02.",
                        Shown.decimal(within))
                .refuse();
        return new Target(
                ideal.times(Fraction.ONE.minus(within)), ideal.times(Fraction.ONE.plus(within)), ideal, false);
    }

    static Target between(Fraction now, Fraction other) {
        return now.compareTo(other) < 0 ? new Target(now, other, now, true) : new Target(other, now, now, true);
    }

    boolean isMetBy(Fraction ratio) {
        int edge = open ? 1 : 0;
        return ratio.compareTo(least) >= edge && most.compareTo(ratio) >= edge;
    }

    /** How far off the best this is, as a part of it. */
    Fraction distance(Fraction ratio) {
        return ratio.over(ideal).minus(Fraction.ONE).absolute();
    }
}
