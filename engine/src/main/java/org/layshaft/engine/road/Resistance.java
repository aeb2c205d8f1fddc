package org.layshaft.engine.road;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * What holds a vehicle back, as far as it is stated. At a steady speed, without wind.
 *
 * @param massKg of the vehicle as it stands on the road
 * @param rollingCoefficient rolling resistance over weight on the wheels, such as 0.013
 * @param dragAreaM2 drag coefficient times frontal area, in m²
 * @param airDensityKgM3 in kg/m³
 */
public record Resistance(
        Optional<Fraction> massKg,
        Optional<Fraction> rollingCoefficient,
        Optional<Fraction> dragAreaM2,
        Optional<Fraction> airDensityKgM3) {

    /** Standard gravity, in m/s². */
    private static final Fraction GRAVITY = Fraction.of(980_665, 100_000);
    /** Half the density goes into drag, and there are (36/10)² (km/h)² in one (m/s)². */
    private static final Fraction HALF_PER_KMH_SQUARED = Fraction.of(1, 2).times(Fraction.of(100, 1296));

    /** Throws {@link ImpossibleFactsException} with everything that cannot be so. */
    public Resistance {
        new Objections()
                .unlessPositive(massKg, "the mass")
                .unlessPositive(rollingCoefficient, "the rolling coefficient")
                .unlessPositive(dragAreaM2, "the drag area")
                .unlessPositive(airDensityKgM3, "the air density")
                .refuse();
    }

    public Telling<Fraction> weightN() {
        return Telling.of(massKg, "the mass").map(GRAVITY::times);
    }

    /** Rolling resistance over weight on the wheels. */
    public Telling<Fraction> rolling() {
        return Telling.of(rollingCoefficient, "the rolling coefficient");
    }

    /** Newtons of drag for each (km/h)². */
    public Telling<Fraction> dragPerKmhSquared() {
        return Telling.of(dragAreaM2, "the drag area")
                .with(
                        Telling.of(airDensityKgM3, "the air density"),
                        (area, density) -> HALF_PER_KMH_SQUARED.times(area).times(density));
    }

    /** All of it together. */
    Telling<HeldBack> all() {
        return weightN().with(rolling(), HeldBack::new).with(dragPerKmhSquared(), HeldBack::andByAir);
    }
}
