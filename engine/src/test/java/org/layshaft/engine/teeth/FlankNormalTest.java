package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.teeth.SomeTeeth.forces;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

/**
 * The second road to tooth forces: the mate presses along the normal of the flank, which is built here from the
 * direction of the tooth in space. No formula of the first road is used.
 */
class FlankNormalTest {
    private static final SimpleMatrix REARWARD = vector(1, 0, 0);
    private static final SimpleMatrix UP = vector(0, 1, 0);
    private static final SimpleMatrix RIGHT = vector(0, 0, 1);

    @RepeatedTest(300)
    void forcesLieAlongTheNormalOfTheFlank(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        LoadedPair pair = somePair(random);
        PairForces forces = forces(pair);
        boolean bevel = pair.driver().isBevel();
        double shaftAngle = Math.toRadians(pair.shaftAngleDeg().orElse(0));
        double ratio = (double) pair.driven().teeth() / pair.driver().teeth();
        // the pitch cones roll on each other: sines as tooth counts, both angles together that of the shafts
        double driverCone = bevel ? Math.atan2(Math.sin(shaftAngle), ratio + Math.cos(shaftAngle)) : 0;
        assertOnNormal(pair.driver(), forces.onDriver(), driverCone, pair.driverTurns(), -1);
        assertOnNormal(
                pair.driven(),
                forces.onDriven(),
                shaftAngle - driverCone,
                forces.onDriven().turns(),
                1);
    }

    /** The mesh lies up: the force as the first road tells it, against one along the flank's normal of equal push. */
    private static void assertOnNormal(Toothing gear, ToothForce force, double cone, Turn turns, int withRotation) {
        double apex = gear.apex().orElse(Side.REAR) == Side.REAR ? 1 : -1;
        SimpleMatrix fromApex = REARWARD.scale(-apex * Math.cos(cone)).plus(UP.scale(Math.sin(cone)));
        SimpleMatrix outOfCone = REARWARD.scale(apex * Math.sin(cone)).plus(UP.scale(Math.cos(cone)));
        // to the right of somebody who looks at the teeth from the point of the cone
        SimpleMatrix aside = RIGHT.scale(-apex);
        double spiral = Math.toRadians(gear.helixDeg().orElseThrow());
        double wind = gear.hand().orElse(Hand.RIGHT) == Hand.RIGHT ? 1 : -1;
        SimpleMatrix acrossTooth = aside.scale(Math.cos(spiral)).minus(fromApex.scale(wind * Math.sin(spiral)));
        double pressure = Math.toRadians(gear.pressureAngleDeg().orElseThrow());
        double clockwise = (turns == Turn.CLOCKWISE ? 1 : -1) * withRotation;
        double flankSide = Math.signum(acrossTooth.dot(RIGHT)) * clockwise;
        double intoGear = gear.form() == GearForm.INTERNAL ? 1 : -1;
        SimpleMatrix normal =
                acrossTooth.scale(flankSide * Math.cos(pressure)).plus(outOfCone.scale(intoGear * Math.sin(pressure)));
        SimpleMatrix expected = normal.scale(force.tangentialN() / Math.abs(normal.dot(RIGHT)));
        assertEquals(expected.dot(REARWARD), force.rearwardN(), 1e-9 * force.totalN(), () -> "thrust on " + force);
        assertEquals(expected.dot(UP), -force.inwardN(), 1e-9 * force.totalN(), () -> "radial force on " + force);
        assertEquals(expected.dot(RIGHT), force.clockwiseN(), 1e-9 * force.totalN());
    }

    private static LoadedPair somePair(Random random) {
        double helix = random.nextInt(4) == 0 ? 0 : 5 + 35 * random.nextDouble();
        double pressure = 14 + 12 * random.nextDouble();
        Hand hand = random.nextBoolean() ? Hand.RIGHT : Hand.LEFT;
        int form = random.nextInt(4);
        GearForm driverForm = form == 0 ? GearForm.BEVEL : form == 1 ? GearForm.INTERNAL : GearForm.EXTERNAL;
        GearForm drivenForm = form == 0 ? GearForm.BEVEL : form == 2 ? GearForm.INTERNAL : GearForm.EXTERNAL;
        boolean internal = form == 1 || form == 2;
        return new LoadedPair(
                toothing("driver", driverForm, random, helix, hand, pressure),
                toothing("driven", drivenForm, random, helix, internal ? hand : hand.opposite(), pressure),
                10 + 500 * random.nextDouble(),
                random.nextBoolean() ? Turn.CLOCKWISE : Turn.ANTICLOCKWISE,
                form == 0 ? OptionalDouble.of(60 + 60 * random.nextDouble()) : OptionalDouble.empty());
    }

    private static Toothing toothing(
            String name, GearForm form, Random random, double helix, Hand hand, double pressure) {
        boolean bevel = form == GearForm.BEVEL;
        return new Toothing(
                name,
                form,
                form == GearForm.INTERNAL ? 70 + random.nextInt(20) : 12 + random.nextInt(40),
                OptionalDouble.of(3),
                OptionalDouble.of(helix),
                helix == 0 ? Optional.empty() : Optional.of(hand),
                OptionalDouble.of(pressure),
                bevel ? OptionalDouble.of(8) : OptionalDouble.empty(),
                bevel ? Optional.of(random.nextBoolean() ? Side.REAR : Side.FRONT) : Optional.empty());
    }

    private static SimpleMatrix vector(double x, double y, double z) {
        return new SimpleMatrix(new double[] {x, y, z});
    }
}
