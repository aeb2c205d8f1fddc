package org.layshaft.engine.swap;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Mesh;

/**
 * Teeth that meet a wish. How strong they are, and how long they are in contact, is not looked into, nor what runs into
 * what inside a ring; {@link #cut} gives the pair that tells.
 *
 * @param mesh the pair that gets them; gears that are alike get them together
 * @param firstTeeth of the first gear of the mesh
 * @param secondTeeth of the second gear
 * @param moduleMm normal module
 * @param helixDeg helix angle
 * @param centreMm working distance of their shafts
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
        double centreMm,
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

    /**
     * The pair as it would be cut, by the rack of ISO 53, profile A, running without backlash.
     *
     * @param shiftOfFirst profile shift coefficient of the first gear; the second gets what is left of the sum
     * @throws org.layshaft.engine.stated.ImpossibleFactsException for a shift that makes no gear
     */
    public InvolutePair cut(double shiftOfFirst) {
        boolean firstIsRing = form(mesh.first()) == GearForm.INTERNAL;
        boolean secondIsRing = form(mesh.second()) == GearForm.INTERNAL;
        double rest = firstIsRing ? shiftOfFirst - shiftSum : shiftSum - shiftOfFirst;
        return new InvolutePair(
                gear(mesh.first(), shiftOfFirst),
                gear(mesh.second(), secondIsRing ? shiftSum + shiftOfFirst : rest),
                centreMm);
    }

    private GearForm form(String gear) {
        return changes.gears().get(gear).form();
    }

    private InvoluteGear gear(String id, double shift) {
        Gear gear = changes.gears().get(id);
        return InvoluteGear.of(gear.form(), gear.teeth(), moduleMm, gear.pressureAngleDeg(), helixDeg, shift);
    }
}
