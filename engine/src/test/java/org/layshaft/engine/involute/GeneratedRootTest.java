package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.GearForm;

/** Where the true involute begins, held against rolling the corner of the rack over the gear step by step. */
class GeneratedRootTest {

    @Test
    void theRacksCornerCutsIntoTheInvoluteUpToTheFormDiameterAndNoFurther() {
        Random random = new Random(9);
        int undercut = 0;
        for (int count = 0; count < 60; count++) {
            InvoluteGear gear = new InvoluteGear(
                    GearForm.EXTERNAL,
                    7 + random.nextInt(16),
                    1,
                    20,
                    random.nextBoolean() ? 0 : random.nextDouble() * 30,
                    -0.3 + 0.6 * random.nextDouble(),
                    random.nextBoolean() ? BasicRack.A : BasicRack.D,
                    OptionalDouble.empty());
            double highest = highestCut(gear);
            if (gear.isUndercut()) {
                undercut++;
                assertEquals(gear.formMm(), highest, 0.01, gear.toString());
            } else {
                assertTrue(highest <= gear.formMm() + 1e-9, gear + " cut up to " + highest);
            }
        }
        assertTrue(undercut > 15 && undercut < 50, undercut + " undercut");
    }

    /** The largest diameter at which a point of the rack's rounded corner ever stands inside the tooth. */
    private static double highestCut(InvoluteGear gear) {
        Section section = new Section(gear);
        double highest = gear.baseMm();
        double pitchRadius = gear.referenceMm() / 2;
        double angle = Math.toRadians(gear.pressureAngleDeg());
        double fillet = gear.rack().filletRadius();
        double middleHeight = gear.shift() - gear.rack().dedendum() + fillet;
        double straight = gear.rack().dedendum() - fillet * (1 - Math.sin(angle));
        double middleAlong = Math.PI / 4 - straight * Math.tan(angle) - fillet * Math.cos(angle);
        for (double facing = angle; facing < Math.PI / 2; facing += 0.005) {
            double along = (middleAlong + fillet * Math.cos(facing)) / Math.cos(Math.toRadians(gear.helixDeg()));
            double height = middleHeight - fillet * Math.sin(facing);
            for (double turn = -0.8; turn < 0.8; turn += 0.001) {
                double x = along + pitchRadius * turn;
                double radius = Math.hypot(x, pitchRadius + height);
                double fromSpace = Math.atan2(x, pitchRadius + height) - turn;
                boolean inside = radius > gear.baseMm() / 2
                        && fromSpace > Math.PI / gear.teeth() - section.halfTooth(radius) + 1e-6;
                highest = inside ? Math.max(highest, 2 * radius) : highest;
            }
        }
        return highest;
    }
}
