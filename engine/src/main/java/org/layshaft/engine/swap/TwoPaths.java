package org.layshaft.engine.swap;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;
import org.layshaft.engine.stated.Telling;

/**
 * Two ways of one drive to the same road, on wheels that roll alike. Nothing winds up only where the ratios along both
 * multiply to the same.
 */
public record TwoPaths(DrivePath one, DrivePath other) {

    /** The product along one over that along the other: 1 where they agree. */
    public Telling<Fraction> quotient() {
        return one.product().with(other.product(), Fraction::over);
    }

    /**
     * Whether they agree.
     *
     * @param within the part that figures rounded for print may differ by
     * @throws org.layshaft.engine.stated.ImpossibleFactsException where that is less than 0
     */
    public Telling<Boolean> agree(Fraction within) {
        new Objections()
                .unless(
                        within.signum() >= 0,
                        "The two may differ by %s. It must not be less than 0.",
                        Shown.decimal(within))
                .refuse();
        return quotient()
                .map(quotient -> quotient.minus(Fraction.ONE).absolute().compareTo(within) <= 0);
    }

    /** What a stage that nobody has stated would have to come to, on the other way, for both to agree. */
    public Fraction stageMissingFromOther() {
        return one.productOfStated().over(other.productOfStated());
    }
}
