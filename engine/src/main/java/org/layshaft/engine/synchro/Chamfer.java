package org.layshaft.engine.synchro;

import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * The chamfers by which the sleeve's teeth try to turn the ring aside.
 *
 * @param angleDeg between a chamfer and the axis: half of the tooth's point
 * @param pitchDiameterMm where the chamfers meet
 * @param friction coefficient of friction between them
 */
public record Chamfer(double angleDeg, double pitchDiameterMm, double friction) {

    public Chamfer {
        new Objections()
                .unless(
                        angleDeg > 0 && angleDeg < 90,
                        "The chamfer angle is %s degrees. It must be more than 0 and below 90, from axis to chamfer.",
                        Shown.decimal(angleDeg))
                .unless(
                        pitchDiameterMm > 0,
                        "The diameter of the chamfers is %s mm. It must be more than 0.",
                        Shown.decimal(pitchDiameterMm))
                .unless(
                        friction >= 0,
                        "The coefficient of friction is %s. It must not be below 0.",
                        Shown.decimal(friction))
                .refuse();
    }

    /** The torque with which a sleeve pushed so hard turns the ring aside; 0 or less where the chamfers jam. */
    public double indexTorqueNm(double forceN) {
        double angle = Math.toRadians(angleDeg);
        double along = Math.cos(angle) - friction * Math.sin(angle);
        double across = Math.sin(angle) + friction * Math.cos(angle);
        return forceN * pitchDiameterMm / 2000 * along / across;
    }
}
