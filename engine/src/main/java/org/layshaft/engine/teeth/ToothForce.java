package org.layshaft.engine.teeth;

import java.util.Optional;
import org.layshaft.kb.layout.Side;

/**
 * The force on one gear at one mesh, in its three parts, each in N and at least 0.
 *
 * @param gear name of the gear
 * @param turns which way it turns
 * @param tangential with or against the way it turns
 * @param radial toward its own centre or away from it
 * @param axial toward the front or the rear; empty where there is no thrust
 * @param atRadiusMm where it acts
 */
public record ToothForce(
        String gear,
        Turn turns,
        double tangentialN,
        Tangential tangential,
        double radialN,
        Radial radial,
        double axialN,
        Optional<Side> axial,
        double atRadiusMm) {

    public enum Tangential {
        WITH_ROTATION,
        AGAINST_ROTATION
    }

    public enum Radial {
        TOWARD_OWN_CENTRE,
        AWAY_FROM_OWN_CENTRE
    }

    /** From parts with signs: radial toward the centre, axial toward the rear. */
    static ToothForce of(
            String gear,
            Turn turns,
            double tangentialN,
            Tangential tangential,
            double inwardN,
            double rearwardN,
            double atRadiusMm) {
        return new ToothForce(
                gear,
                turns,
                tangentialN,
                tangential,
                Math.abs(inwardN),
                inwardN >= 0 ? Radial.TOWARD_OWN_CENTRE : Radial.AWAY_FROM_OWN_CENTRE,
                Math.abs(rearwardN),
                rearwardN == 0 ? Optional.empty() : Optional.of(rearwardN > 0 ? Side.REAR : Side.FRONT),
                atRadiusMm);
    }

    /** All three parts together. */
    public double totalN() {
        return Math.sqrt(tangentialN * tangentialN + radialN * radialN + axialN * axialN);
    }

    /** Thrust with its sign: more than 0 toward the rear. */
    double rearwardN() {
        return axial.filter(side -> side == Side.REAR).isPresent() ? axialN : -axialN;
    }

    /** More than 0 toward the centre. */
    double inwardN() {
        return radial == Radial.TOWARD_OWN_CENTRE ? radialN : -radialN;
    }

    /** More than 0 where it pushes the gear clockwise, seen from the front. */
    double clockwiseN() {
        return tangential == Tangential.WITH_ROTATION ? turns.sign() * tangentialN : -turns.sign() * tangentialN;
    }
}
