package org.layshaft.engine.synchro;

import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * A friction cone.
 *
 * @param angleDeg between the cone's surface and the axis: half of what its sides make with each other
 * @param meanDiameterMm in the middle of the surface
 * @param friction coefficient of friction, sliding
 * @param surfaces that rub: 1 for a single cone, 2 or 3 for rings within rings
 */
public record Cone(double angleDeg, double meanDiameterMm, double friction, int surfaces) {

    public Cone {
        new Objections()
                .unless(
                        angleDeg > 0 && angleDeg < 90,
                        "The cone angle is %s degrees. It must be more than 0 and below 90, from axis to surface.",
                        Shown.decimal(angleDeg))
                .unless(
                        meanDiameterMm > 0,
                        "The cone diameter is %s mm. It must be more than 0.",
                        Shown.decimal(meanDiameterMm))
                .unless(
                        friction > 0,
                        "The coefficient of friction is %s. It must be more than 0.",
                        Shown.decimal(friction))
                .unless(surfaces >= 1, "The number of cone surfaces is %s. It must be at least 1.", surfaces)
                .refuse();
    }

    public static Cone single(double angleDeg, double meanDiameterMm, double friction) {
        return new Cone(angleDeg, meanDiameterMm, friction, 1);
    }

    /** The torque while slipping under an axial force. */
    public double torqueNm(double forceN) {
        return surfaces * friction * forceN * radiusM() / Math.sin(angle());
    }

    /** The axial force that keeps up a torque. */
    public double holdingForceN(double torqueNm) {
        return normalForceN(torqueNm) * Math.sin(angle());
    }

    /** The axial force that it takes to push the cone home for a torque, against the friction along its slope. */
    public double engagingForceN(double torqueNm) {
        return normalForceN(torqueNm) * (Math.sin(angle()) + friction * Math.cos(angle()));
    }

    /** How wide each surface must be, along its slope, to carry a torque at this mean pressure. */
    public double widthMm(double torqueNm, double pressureNPerMm2) {
        return normalForceN(torqueNm) / (Math.PI * meanDiameterMm * pressureNPerMm2);
    }

    /** The axial force at which a worn-in surface of this width bears so hard at its small end, where it bears hardest. */
    public double wornInForceN(double widthMm, double mostPressureNPerMm2) {
        double small = smallDiameterMm(widthMm);
        return Math.PI / 2 * mostPressureNPerMm2 * small * (largeDiameterMm(widthMm) - small);
    }

    /** At the large end of a surface of this width along its slope. */
    public double largeDiameterMm(double widthMm) {
        return meanDiameterMm + widthMm * Math.sin(angle());
    }

    /** At the small end of a surface of this width along its slope. */
    public double smallDiameterMm(double widthMm) {
        return meanDiameterMm - widthMm * Math.sin(angle());
    }

    /** Whether the ring comes off by itself once the force is gone; otherwise it sticks. */
    public boolean releases() {
        return angleDeg > stickingBelowDeg();
    }

    /** The angle below which, with this friction, a ring sticks on its cone. */
    public double stickingBelowDeg() {
        return Math.toDegrees(Math.atan(friction));
    }

    /** How much nearer the gear the ring comes to stand when so much is worn off square to the surface. */
    public double reserveLostMm(double wornMm) {
        return wornMm / Math.sin(angle());
    }

    /** On each surface: the axial force passes through all of them. */
    private double normalForceN(double torqueNm) {
        return torqueNm / (surfaces * friction * radiusM());
    }

    private double radiusM() {
        return meanDiameterMm / 2000;
    }

    private double angle() {
        return Math.toRadians(angleDeg);
    }
}
