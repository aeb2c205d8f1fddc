package org.layshaft.engine.involute;

import org.layshaft.kb.layout.GearForm;

/** Gears for tests, with the usual rack unless told otherwise. */
final class SomeGears {
    private SomeGears() {}

    static InvoluteGear spur(double moduleMm, int teeth, double shift) {
        return helical(moduleMm, 0, teeth, shift);
    }

    static InvoluteGear helical(double moduleMm, double helixDeg, int teeth, double shift) {
        return InvoluteGear.of(GearForm.EXTERNAL, teeth, moduleMm, 20, helixDeg, shift);
    }

    static InvoluteGear ring(double moduleMm, int teeth, double shift) {
        return InvoluteGear.of(GearForm.INTERNAL, teeth, moduleMm, 20, 0, shift);
    }

    /** A straight gear with its tip so far outside, or for a ring inside, its reference circle. */
    static InvoluteGear withAddendum(GearForm form, double moduleMm, double angleDeg, int teeth, double addendumMm) {
        InvoluteGear gear = InvoluteGear.of(form, teeth, moduleMm, angleDeg, 0, 0);
        return gear.withTipMm(gear.referenceMm() + (form == GearForm.INTERNAL ? -2 : 2) * addendumMm);
    }

    static InvolutePair withoutBacklash(InvoluteGear first, InvoluteGear second) {
        return new InvolutePair(
                first,
                second,
                InvolutePair.centreMmWithoutBacklash(first, second).orElseThrow());
    }
}
