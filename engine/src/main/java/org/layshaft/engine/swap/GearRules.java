package org.layshaft.engine.swap;

import java.util.List;
import java.util.OptionalDouble;
import org.layshaft.engine.identify.NormalPitch;
import org.layshaft.engine.stated.Objections;

/**
 * What teeth may be cut.
 *
 * @param centreMm working distance of the two shafts; empty where it is not stated
 * @param modulesMm normal modules that there are tools for; that of the gears that are there is always tried too
 * @param helixLeastDeg smallest helix angle; that of the gears that are there is always tried too
 * @param helixMostDeg largest helix angle
 * @param shiftLeast smallest sum of the two profile shift coefficients; for an internal pair, ring less pinion
 * @param shiftMost largest sum of them
 * @param teethLeast fewest teeth of a gear
 * @param teethMost most teeth of a gear
 */
public record GearRules(
        OptionalDouble centreMm,
        List<Double> modulesMm,
        double helixLeastDeg,
        double helixMostDeg,
        double shiftLeast,
        double shiftMost,
        int teethLeast,
        int teethMost) {

    /** Throws {@link org.layshaft.engine.stated.ImpossibleFactsException} with every bound that makes no sense. */
    public GearRules {
        modulesMm = List.copyOf(modulesMm);
        Objections objections = new Objections()
                .unless(
                        centreMm.orElse(1) > 0,
                        "The centre distance is %s mm. It must be more than 0.",
                        centreMm.orElse(1))
                .unless(
                        helixLeastDeg >= 0 && helixLeastDeg <= helixMostDeg && helixMostDeg < 60,
                        "The helix angle may be from %s to %s degrees. State the smaller one first, from 0 to below 60.",
                        helixLeastDeg,
                        helixMostDeg)
                .unless(
                        shiftLeast <= shiftMost,
                        "The sum of the profile shifts may be from %s to %s. State the smaller one first.",
                        shiftLeast,
                        shiftMost)
                .unless(
                        teethLeast >= ChangeCheck.FEWEST_TEETH && teethLeast <= teethMost,
                        "A gear may have from %d to %d teeth. State the smaller number first, at least %d.",
                        teethLeast,
                        teethMost,
                        ChangeCheck.FEWEST_TEETH);
        modulesMm.forEach(
                module -> objections.unless(module > 0, "A module is %s mm. It must be more than 0.", module));
        objections.refuse();
    }

    /**
     * What is cut for such boxes: modules of ISO 54 from 1.5 to 6 mm; straight teeth beside straight ones, else 15 to 35
     * degrees; profile shifts that come to -0.4 to 1.2; 12 to 80 teeth. Common practice, no source, but for the modules.
     *
     * @param helixNowDeg helix angle of the pair that is there
     */
    public static GearRules common(OptionalDouble centreMm, double helixNowDeg) {
        List<Double> modules = NormalPitch.standard().stream()
                .filter(pitch -> pitch.series() != NormalPitch.Series.DIAMETRAL_PITCH && !pitch.isToBeAvoided())
                .map(NormalPitch::moduleMm)
                .filter(module -> module >= 1.5 && module <= 6)
                .sorted()
                .toList();
        boolean straight = helixNowDeg == 0;
        return new GearRules(centreMm, modules, straight ? 0 : 15, straight ? 0 : 35, -0.4, 1.2, 12, 80);
    }

    boolean allowsShift(double sum) {
        // a helix that is solved for one of the bounds may miss it in the last digits
        return sum >= shiftLeast - 1e-9 && sum <= shiftMost + 1e-9;
    }
}
