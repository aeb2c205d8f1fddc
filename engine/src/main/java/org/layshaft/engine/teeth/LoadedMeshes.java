package org.layshaft.engine.teeth;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Connection.Meshing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** From torques and speeds for one turn of the input to the pairs of a layout under load. */
record LoadedMeshes(Layout layout, Hands hands, Motion motion, Balance.Torques torques, InputTorque input) {

    MeshForces forces(Meshing meshing) {
        Map<String, Fraction> onBodies = torques.on(meshing);
        String first = meshing.mesh().first();
        Fraction torqueOnFirst = onBodies.get(first).times(input.nm());
        Fraction speedOfFirst = speed(first, meshing);
        // where nothing turns against the carrier, neither drives; the forces are the same, whichever is taken to
        boolean firstDrives = torqueOnFirst.times(speedOfFirst).signum() <= 0;
        String driver = firstDrives ? first : meshing.mesh().second();
        String driven = meshing.mesh().other(driver);
        int alike = Math.max(alike(first), alike(meshing.mesh().second()));
        Fraction torque = onBodies.get(driver).times(input.nm());
        LoadedPair pair = new LoadedPair(
                toothing(driver),
                toothing(driven),
                torque.absolute().over(Fraction.of(alike)).toDouble(),
                torque.signum() < 0 ? input.turns() : input.turns().opposite());
        return new MeshForces(meshing.mesh(), driver, driven, alike, forces(pair));
    }

    /** Where gears have been exchanged, two may stand side by side that cannot mesh. */
    private static Telling<PairForces> forces(LoadedPair pair) {
        List<String> unlike = pair.unlike();
        return unlike.isEmpty()
                ? pair.forces()
                : Telling.cannotBeTold(unlike.stream()
                        .map(sentence -> sentence.substring(0, sentence.length() - 1))
                        .toList());
    }

    /** Against the carrier, where there is one; for one turn of the input. */
    private Fraction speed(String gear, Meshing meshing) {
        Fraction carrier = meshing.carrier().flatMap(motion::speedOf).orElse(Fraction.ZERO);
        return motion.speedOf(gear).orElse(Fraction.ZERO).minus(carrier);
    }

    private int alike(String gear) {
        return layout.find(Shaft.class, layout.gear(gear).carrier())
                .map(Shaft::count)
                .orElse(1);
    }

    /** A layout tells neither face widths nor which way the points of cones lie: bevel gears cannot be told yet. */
    private Toothing toothing(String id) {
        Gear gear = layout.gear(id);
        return new Toothing(
                gear.name(),
                gear.form(),
                gear.teeth(),
                gear.moduleMm(),
                OptionalDouble.of(gear.helixDeg()),
                hands.of(id),
                OptionalDouble.of(gear.pressureAngleDeg()),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
