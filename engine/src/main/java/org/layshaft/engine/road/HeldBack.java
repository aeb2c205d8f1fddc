package org.layshaft.engine.road;

import org.layshaft.engine.exact.Fraction;

/**
 * What holds a vehicle back, all of it known.
 *
 * @param rolling resistance over weight on the wheels
 * @param dragPerKmhSquared newtons for each (km/h)²
 */
record HeldBack(double weightN, double rolling, double dragPerKmhSquared) {

    HeldBack(Fraction weightN, Fraction rolling) {
        this(weightN.toDouble(), rolling.toDouble(), 0);
    }

    HeldBack andByAir(Fraction drag) {
        return new HeldBack(weightN, rolling, drag.toDouble());
    }

    double dragN(double kmh) {
        return dragPerKmhSquared * kmh * kmh;
    }

    double onTheLevelN() {
        return weightN * rolling;
    }

    /** What so much effort climbs, drag already taken off. */
    Gradient gradient(double newtons) {
        return Gradient.of(newtons / weightN, rolling);
    }
}
