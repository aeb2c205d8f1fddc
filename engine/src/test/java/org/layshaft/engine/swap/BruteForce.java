package org.layshaft.engine.swap;

import java.util.ArrayList;
import java.util.List;

/**
 * Teeth for a pair, found by trying all teeth and helix angles on a grid; the equations are written out
 * anew, in lengths rather than in angles of involutes.
 */
record BruteForce(GearRules rules, double pressureAngleDeg, boolean isInternal) {
    private static final double GRID_DEG = 0.02;

    /** Some helix angle on the grid suits these teeth. */
    boolean suits(double moduleMm, int one, int other) {
        return helices().stream().anyMatch(helix -> suits(moduleMm, one, other, helix));
    }

    boolean suits(double moduleMm, int one, int other, double helixDeg) {
        double sum = shiftSum(moduleMm, one, other, helixDeg);
        return sum >= rules.shiftLeast()
                && sum <= rules.shiftMost()
                && (isInternal || sum >= undercut(one, helixDeg) + undercut(other, helixDeg));
    }

    /** From the thickness of both teeth together, which on the working circles must fill one pitch; in a ring, its space. */
    double shiftSum(double moduleMm, int one, int other, double helixDeg) {
        double helix = Math.toRadians(helixDeg);
        double slope = Math.tan(Math.toRadians(pressureAngleDeg));
        double transverse = Math.atan(slope / Math.cos(helix));
        int together = isInternal ? Math.abs(one - other) : one + other;
        double reference = moduleMm * together / Math.cos(helix) / 2;
        double centre = rules.centreMm().orElseThrow();
        double base = reference * Math.cos(transverse);
        if (base > centre) {
            return Double.NEGATIVE_INFINITY;
        }
        // how far a string from the base circle to the working circle is longer than the arc it came off, over the
        // radius
        double working = Math.sqrt(centre * centre - base * base) / base - Math.acos(base / centre);
        double unshifted = Math.sqrt(reference * reference - base * base) / base - transverse;
        return (working - unshifted) * together / (2 * slope);
    }

    /** Where the rack's straight flank would reach below the foot of the line of action. */
    private double undercut(int teeth, double helixDeg) {
        double helix = Math.toRadians(helixDeg);
        double transverse = Math.atan(Math.tan(Math.toRadians(pressureAngleDeg)) / Math.cos(helix));
        double radiusInModules = teeth / Math.cos(helix) / 2;
        double foot = radiusInModules * Math.sin(transverse) * Math.sin(transverse);
        return 1 - foot;
    }

    private List<Double> helices() {
        List<Double> helices = new ArrayList<>();
        for (int i = 0; rules.helixLeastDeg() + i * GRID_DEG <= rules.helixMostDeg(); i++) {
            helices.add(rules.helixLeastDeg() + i * GRID_DEG);
        }
        return helices;
    }
}
