package org.layshaft.engine.road;

import java.math.BigDecimal;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * How far a loaded tyre rolls for its size. A tyre under load rolls less far than its free circumference; by how much,
 * its code does not say.
 *
 * @param ofDiameter rolling circumference over free diameter
 * @param says the same in words
 */
public record RollingConvention(Fraction ofDiameter, String says) {
    private static final Fraction PI = Fraction.of(new BigDecimal("3.14159265358979323846"));

    /** What is usually reckoned with for a radial tyre under load: common practice, no source. */
    public static final RollingConvention RADIAL = new RollingConvention(
            Fraction.of(61, 20), "3.05 times the free diameter, usual for a radial tyre under load");

    /** Geometric: the free circumference, no load and no slip. */
    public static final RollingConvention FREE = new RollingConvention(PI, "the free circumference, without load");

    /** A stated part of the free circumference, such as 0.97. */
    public static RollingConvention ofFreeCircumference(Fraction dynamicFactor) {
        new Objections()
                .unless(
                        dynamicFactor.compareTo(Fraction.of(4, 5)) >= 0
                                && dynamicFactor.compareTo(Fraction.of(11, 10)) <= 0,
                        "The dynamic factor of the tyre is %s. It must be from 0.8 to 1.1: the part of its free circumference that it rolls in one turn, such as 0.97.",
                        Shown.decimal(dynamicFactor))
                .refuse();
        return new RollingConvention(
                PI.times(dynamicFactor),
                "%s of the free circumference, as stated".formatted(Shown.decimal(dynamicFactor)));
    }

    /** The usual one for tyres of this build, where there is one. */
    static Optional<RollingConvention> usualFor(TyreSize.Build build) {
        return build == TyreSize.Build.RADIAL ? Optional.of(RADIAL) : Optional.empty();
    }
}
