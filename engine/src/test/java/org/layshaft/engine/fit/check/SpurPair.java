package org.layshaft.engine.fit.check;

import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/**
 * 20 and 40 straight teeth of module 2 mm at 20 degrees, unshifted, as the first pair of the Phalarope at 60 mm. Both are
 * told by their span over teeth, 0.047 mm less than in G-13 of the published numbers: 15.3209 mm over 3 teeth, and by
 * the same formula 27.6896 mm over 5. So the backlash is 2 x 0.047 / cos 20 = 0.1000 mm at 60 mm.
 */
final class SpurPair {
    static final String PINION = "input";
    static final String PINION_TEETH = "drive";
    static final String GEAR = "cluster-driven";
    static final String SHAFTS = "input/countershaft";

    private SpurPair() {}

    static FittingBox in(FittingBox box) {
        return gear(gear(box, PINION, PINION_TEETH, 20, 3, 15.2739, 44), GEAR, "", 40, 5, 27.6426, 84)
                .always("box-case", SHAFTS, Fact.of(FactName.CENTRE_MM, 60))
                .always("box-case", SHAFTS, Fact.of(FactName.CENTRE_TOLERANCE_MM, 0.005));
    }

    private static FittingBox gear(
            FittingBox box, String place, String feature, int teeth, int spanTeeth, double spanMm, double tipMm) {
        return box.always(place, feature, Fact.of(FactName.TEETH, teeth))
                .always(place, feature, Fact.of(FactName.MODULE_MM, 2))
                .always(place, feature, Fact.of(FactName.HELIX_DEG, 0))
                .always(place, feature, Fact.of(FactName.PROFILE_SHIFT, 0))
                .always(place, feature, Fact.of(FactName.SPAN_TEETH, spanTeeth))
                .always(place, feature, Fact.of(FactName.SPAN_MM, spanMm))
                .always(place, feature, Fact.of(FactName.TIP_MM, tipMm));
    }
}
