package org.layshaft.engine.teeth;

import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Mesh;

/**
 * The forces at one mesh of a box under torque.
 *
 * @param driver id of the gear that drives
 * @param driven id of the gear that is driven
 * @param alike how many such meshes there are, as with planets; each of them bears these forces
 * @param forces at each of them
 */
public record MeshForces(Mesh mesh, String driver, String driven, int alike, Telling<PairForces> forces) {

    /** The force on one of the two gears at each of the meshes. */
    public Telling<ToothForce> on(String gear) {
        return forces.map(both -> gear.equals(driver) ? both.onDriver() : both.onDriven());
    }
}
