package org.layshaft.engine.whatif;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Train;

/** Leaves the road out of a motion: it is a body to the equations, but nothing that anybody asks about. */
final class OfParts {
    private OfParts() {}

    static Motion only(Motion motion) {
        Map<String, Fraction> speeds = new LinkedHashMap<>(motion.speeds());
        Set<String> carrying = new LinkedHashSet<>(motion.carrying());
        speeds.remove(Train.ROAD);
        carrying.remove(Train.ROAD);
        return new Motion(motion.outcome(), speeds, carrying, motion.ratio());
    }
}
