package org.layshaft.engine.swap;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Mesh;

/**
 * Teeth that meet a wish. How strong they are, and how long they are in contact, is not looked into.
 *
 * @param mesh the pair that gets them; gears that are alike get them together
 * @param firstTeeth of the first gear of the mesh
 * @param secondTeeth of the second gear
 * @param moduleMm normal module
 * @param helixDeg helix angle
 * @param shiftSum what the profile shifts must come to at the given centre distance; for an internal pair, ring less
 *     pinion. They can be shared out so that neither gear is undercut
 * @param ratio of the box in the gear that the wish is about, without sign
 * @param distance from the best ratio, as a part of it
 * @param changes what has to be changed to come to it
 */
public record Proposal(
        Mesh mesh,
        int firstTeeth,
        int secondTeeth,
        double moduleMm,
        double helixDeg,
        double shiftSum,
        Fraction ratio,
        Fraction distance,
        boolean sameModule,
        boolean sameHelix,
        Change changes) {

    /** Which of module and helix are others than now: 0 to 2. */
    public int unlikeNow() {
        return (sameModule ? 0 : 1) + (sameHelix ? 0 : 1);
    }
}
