package org.layshaft.engine.teeth;

/**
 * A force on a gear and where on its shaft it acts.
 *
 * @param atMm of the middle of the gear, along the shaft toward the rear, from where the positions are counted
 * @param meshAtDeg where round the shaft the mesh lies: 0 is up, 90 to the right as seen from the front
 */
public record PlacedForce(ToothForce force, double atMm, double meshAtDeg) {

    /** Upward, in N. */
    double upN() {
        return -force.inwardN() * up() - force.clockwiseN() * right();
    }

    /** To the right as seen from the front, in N. */
    double rightN() {
        return -force.inwardN() * right() + force.clockwiseN() * up();
    }

    /** What the thrust, off the middle of the shaft, does to tilt it upward behind, in N·mm. */
    double tiltUpNmm() {
        return -force.rearwardN() * force.atRadiusMm() * up();
    }

    /** The same to the right. */
    double tiltRightNmm() {
        return -force.rearwardN() * force.atRadiusMm() * right();
    }

    private double up() {
        return Math.cos(Math.toRadians(meshAtDeg));
    }

    private double right() {
        return Math.sin(Math.toRadians(meshAtDeg));
    }
}
