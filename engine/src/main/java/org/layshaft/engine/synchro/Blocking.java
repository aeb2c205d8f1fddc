package org.layshaft.engine.synchro;

/** A cone and the chamfers outside it: whether the ring keeps the sleeve out until the speeds are one. */
public record Blocking(Cone cone, Chamfer chamfer) {

    /** The ring blocks while the cone turns it harder than the chamfers turn it back, at whatever force. */
    public boolean blocks() {
        return marginRatio() >= 1;
    }

    /** The cone's torque over the chamfers': below 1 it grates, far above 1 the lever is heavy. */
    public double marginRatio() {
        double index = chamfer.indexTorqueNm(1);
        return index <= 0 ? Double.POSITIVE_INFINITY : cone.torqueNm(1) / index;
    }

    /** The chamfer angle at which the two torques are equal: a blunter one blocks, a sharper one does not. */
    public double leastChamferDeg() {
        double lever = cone.torqueNm(1) * 2000 / chamfer.pitchDiameterMm();
        double friction = chamfer.friction();
        return Math.toDegrees(Math.atan2(1 - friction * lever, friction + lever));
    }
}
