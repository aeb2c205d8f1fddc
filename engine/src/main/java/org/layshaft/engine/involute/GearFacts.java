package org.layshaft.engine.involute;

import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;
import org.layshaft.kb.layout.GearForm;

/** What must hold for stated facts to make a gear. The question is put first, for it is put very often. */
final class GearFacts {
    private GearFacts() {}

    static boolean hold(
            GearForm form, int teeth, double moduleMm, double pressureAngleDeg, double helixDeg, double shift) {
        return isCylindrical(form)
                && teeth >= 3
                && moduleMm > 0
                && moduleMm < Double.POSITIVE_INFINITY
                && pressureAngleDeg >= 5
                && pressureAngleDeg <= 50
                && helixDeg >= 0
                && helixDeg <= 60
                && Math.abs(shift) <= 5;
    }

    static void refuse(
            GearForm form, int teeth, double moduleMm, double pressureAngleDeg, double helixDeg, double shift) {
        new Objections()
                .unless(
                        isCylindrical(form),
                        "The form is %s. It must be external or internal: teeth on a cylinder.",
                        form.word())
                .unless(teeth >= 3, "The number of teeth is %s. It must be at least 3.", teeth)
                .unless(
                        moduleMm > 0 && moduleMm < Double.POSITIVE_INFINITY,
                        "The module is %s mm. It must be more than 0.",
                        Shown.decimal(moduleMm))
                .unless(
                        pressureAngleDeg >= 5 && pressureAngleDeg <= 50,
                        "The pressure angle is %s degrees. It must be from 5 to 50.",
                        Shown.decimal(pressureAngleDeg))
                .unless(
                        helixDeg >= 0 && helixDeg <= 60,
                        "The helix angle is %s degrees. It must be from 0 to 60; the hand is stated apart.",
                        Shown.decimal(helixDeg))
                .unless(
                        Math.abs(shift) <= 5,
                        "The profile shift coefficient is %s. It must be from -5 to 5, in modules.",
                        Shown.decimal(shift))
                .refuse();
    }

    static void checkTip(GearForm form, double tipMm, double rootMm, double baseMm) {
        if (form == GearForm.INTERNAL) {
            new Objections()
                    .unless(
                            tipMm > 0 && tipMm < rootMm,
                            "The tip diameter is %s mm. It must lie inside the root diameter of the internal teeth, %s mm.",
                            Shown.decimal(tipMm),
                            Shown.decimal(rootMm))
                    .refuse();
            return;
        }
        if (!(tipMm > rootMm && tipMm > baseMm)) {
            new Objections()
                    .unless(
                            tipMm > rootMm,
                            "The tip diameter is %s mm. It must be more than the root diameter, %s mm.",
                            Shown.decimal(tipMm),
                            Shown.decimal(rootMm))
                    .unless(
                            tipMm > baseMm,
                            "The tip diameter is %s mm. It must be more than the base diameter, %s mm, or no involute is left.",
                            Shown.decimal(tipMm),
                            Shown.decimal(baseMm))
                    .refuse();
        }
    }

    private static boolean isCylindrical(GearForm form) {
        return form == GearForm.EXTERNAL || form == GearForm.INTERNAL;
    }
}
