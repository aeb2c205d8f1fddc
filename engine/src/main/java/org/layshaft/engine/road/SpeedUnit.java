package org.layshaft.engine.road;

import org.layshaft.engine.exact.Fraction;

/** What a road speed is told in. */
public enum SpeedUnit {
    KMH("km/h", Fraction.ONE),
    MPH("mph", Fraction.of(1_609_344, 1_000_000));

    private final String sign;
    private final Fraction kmh;

    SpeedUnit(String sign, Fraction kmh) {
        this.sign = sign;
        this.kmh = kmh;
    }

    /** {@code km/h}. */
    public String sign() {
        return sign;
    }

    public Fraction fromKmh(Fraction speed) {
        return speed.over(kmh);
    }

    public Fraction toKmh(Fraction speed) {
        return speed.times(kmh);
    }
}
