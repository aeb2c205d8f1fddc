package org.layshaft.engine.involute;

import java.util.OptionalDouble;
import java.util.Random;
import org.layshaft.kb.layout.GearForm;

/** Random pairs that could stand in a gearbox: external, straight and helical, or a pinion in a ring. */
final class DrawnPairs {
    private static final double[] MODULES_MM = {1, 1.25, 1.5, 2, 2.25, 2.5, 3, 4, 5};
    private static final double[] ANGLES_DEG = {14.5, 17.5, 20, 22.5, 25};
    private static final BasicRack[] RACKS = {BasicRack.A, BasicRack.B, BasicRack.C, BasicRack.D};

    /** Below it, next to nothing is left of the line of action between the base circles. */
    private static final double LEAST_WORKING_ANGLE_DEG = 12;

    private final Random random;

    DrawnPairs(long seed) {
        random = new Random(seed);
    }

    /** At a distance that leaves some backlash, or some overlap. */
    InvolutePair next() {
        double moduleMm = MODULES_MM[random.nextInt(MODULES_MM.length)];
        double angleDeg = ANGLES_DEG[random.nextInt(ANGLES_DEG.length)];
        double helixDeg = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 40;
        BasicRack rack = RACKS[random.nextInt(RACKS.length)];
        boolean ring = random.nextInt(4) == 0;
        int pinion = 10 + random.nextInt(50);
        int mate = ring ? pinion + 12 + random.nextInt(60) : 10 + random.nextInt(70);
        InvoluteGear first = gear(GearForm.EXTERNAL, pinion, moduleMm, angleDeg, helixDeg, rack);
        InvoluteGear second =
                gear(ring ? GearForm.INTERNAL : GearForm.EXTERNAL, mate, moduleMm, angleDeg, helixDeg, rack);
        OptionalDouble centreMm = InvolutePair.centreMmWithoutBacklash(first, second);
        boolean whole = centreMm.isPresent() && first.topLandMm() > 0 && (!ring || second.tipMm() > second.baseMm());
        double apartMm = (random.nextDouble() - 0.2) * 0.1 * moduleMm;
        return whole
                ? InvolutePair.at(first, second, centreMm.getAsDouble() + (ring ? -apartMm : apartMm))
                        .filter(pair -> pair.workingPressureAngleDeg() > LEAST_WORKING_ANGLE_DEG)
                        .orElseGet(this::next)
                : next();
    }

    private InvoluteGear gear(
            GearForm form, int teeth, double moduleMm, double angleDeg, double helixDeg, BasicRack rack) {
        double shift = -0.4 + random.nextDouble();
        return new InvoluteGear(form, teeth, moduleMm, angleDeg, helixDeg, shift, rack, OptionalDouble.empty());
    }
}
