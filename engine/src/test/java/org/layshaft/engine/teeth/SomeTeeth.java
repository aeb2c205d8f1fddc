package org.layshaft.engine.teeth;

import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

/** Gears for tests, everything stated. */
final class SomeTeeth {
    private SomeTeeth() {}

    static Toothing spur(String name, int teeth, double moduleMm) {
        return Toothing.external(name, teeth, moduleMm, 0, Optional.empty(), 20);
    }

    static Toothing helical(String name, int teeth, Hand hand) {
        return Toothing.external(name, teeth, 4, 20, Optional.of(hand), 20);
    }

    static Toothing internal(String name, int teeth, Hand hand) {
        return new Toothing(
                name,
                GearForm.INTERNAL,
                teeth,
                OptionalDouble.of(4),
                OptionalDouble.of(20),
                Optional.of(hand),
                OptionalDouble.of(20),
                OptionalDouble.empty(),
                Optional.empty());
    }

    static Toothing straightBevel(
            String name, int teeth, double moduleMm, double pressureAngleDeg, double faceWidthMm, Side apex) {
        return bevel(name, teeth, moduleMm, 0, Optional.empty(), pressureAngleDeg, faceWidthMm, apex);
    }

    static Toothing bevel(
            String name,
            int teeth,
            double moduleMm,
            double spiralDeg,
            Optional<Hand> hand,
            double pressureAngleDeg,
            double faceWidthMm,
            Side apex) {
        return new Toothing(
                name,
                GearForm.BEVEL,
                teeth,
                OptionalDouble.of(moduleMm),
                OptionalDouble.of(spiralDeg),
                hand,
                OptionalDouble.of(pressureAngleDeg),
                OptionalDouble.of(faceWidthMm),
                Optional.of(apex));
    }

    static PairForces forces(LoadedPair pair) {
        return pair.forces()
                .value()
                .orElseThrow(() -> new AssertionError(pair.forces().whyNot()));
    }
}
