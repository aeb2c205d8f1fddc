package org.layshaft.engine.train;

import java.util.Map;

/** Speeds by singular values, for tests of what is built on the exact ones. */
public final class FloatingSpeeds {
    private FloatingSpeeds() {}

    /** By body id, for one turn of the input; a body that the input does not fix is absent. */
    public static Map<String, Double> of(Train train) {
        return new FloatingRoad(train).speeds();
    }
}
