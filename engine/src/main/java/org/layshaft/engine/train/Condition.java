package org.layshaft.engine.train;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.layshaft.engine.exact.Fraction;

/**
 * What is so, beside where the sleeves stand.
 *
 * @param pull what the engine does while the clutch is engaged
 * @param bend turns of wheels for one turn of the road, by id; straight ahead it is empty
 */
public record Condition(Clutch clutch, Vehicle vehicle, Pull pull, Map<String, Fraction> bend) {
    /** The engine turns, the vehicle stands. */
    public static final Condition STANDING = new Condition(Clutch.ENGAGED, Vehicle.STANDING, Pull.DRIVE, Map.of());

    /** The engine pulls, the vehicle rolls straight ahead. */
    public static final Condition ROLLING = new Condition(Clutch.ENGAGED, Vehicle.ROLLING, Pull.DRIVE, Map.of());

    public Condition {
        bend = Collections.unmodifiableMap(new TreeMap<>(bend));
    }

    /** Whether the engine is tied to the input. */
    public enum Clutch {
        ENGAGED,
        RELEASED
    }

    /** What the wheels do. */
    public enum Vehicle {
        STANDING,
        ROLLING,
        /** The wheels hang free: nothing turns them but the drive. */
        LIFTED
    }

    /** Which end drives. */
    public enum Pull {
        DRIVE,
        OVERRUN
    }

    public Condition withClutchReleased() {
        return new Condition(Clutch.RELEASED, vehicle, pull, bend);
    }

    public Condition onTheOverrun() {
        return new Condition(clutch, vehicle, Pull.OVERRUN, bend);
    }

    public Condition lifted() {
        return new Condition(clutch, Vehicle.LIFTED, pull, bend);
    }

    /**
     * In a bend, with two wheels of one axle turning unlike.
     *
     * @param difference how much more the outer wheel turns than the inner, for one turn of the road
     */
    public Condition turning(String inner, String outer, Fraction difference) {
        Map<String, Fraction> more = new TreeMap<>(bend);
        Fraction half = difference.over(Fraction.of(2));
        more.put(inner, Fraction.ONE.minus(half));
        more.put(outer, Fraction.ONE.plus(half));
        return new Condition(clutch, vehicle, pull, more);
    }
}
