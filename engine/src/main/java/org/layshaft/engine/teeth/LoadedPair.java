package org.layshaft.engine.teeth;

import java.util.List;
import java.util.OptionalDouble;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * Two gears in mesh with a torque between them. On the overrun the gear that was driven drives.
 *
 * @param torqueNm that the driver brings to the mesh, at least 0; no losses
 * @param driverTurns which way the driver turns, seen from the front end of its own shaft
 * @param shaftAngleDeg between the shafts of bevel gears, nearly always 90; other gears need none
 */
public record LoadedPair(
        Toothing driver, Toothing driven, double torqueNm, Turn driverTurns, OptionalDouble shaftAngleDeg) {

    /** Throws {@link ImpossibleFactsException} for a torque below 0 or shafts that do not cross. */
    public LoadedPair {
        new Objections()
                .unless(
                        torqueNm >= 0,
                        "The torque on %s is %s N·m. It must not be less than 0; where the torque is the other way, the other gear drives.",
                        driver.name(),
                        torqueNm)
                .unless(
                        shaftAngleDeg.orElse(90) > 0 && shaftAngleDeg.orElse(90) < 180,
                        "The angle between the shafts of %s and %s is %s degrees. It must be more than 0 and less than 180.",
                        driver.name(),
                        driven.name(),
                        shaftAngleDeg.orElse(90))
                .refuse();
    }

    /** On parallel shafts. */
    public LoadedPair(Toothing driver, Toothing driven, double torqueNm, Turn driverTurns) {
        this(driver, driven, torqueNm, driverTurns, OptionalDouble.empty());
    }

    /** Everything that keeps the two from meshing, in sentences; empty where nothing stated does. */
    public List<String> unlike() {
        return new Mates(driver, driven).objections().problems();
    }

    /**
     * The forces on both gears.
     *
     * @throws ImpossibleFactsException where the two cannot mesh
     */
    public Telling<PairForces> forces() {
        return MeshGeometry.of(this).map(geometry -> geometry.forces(this));
    }
}
