package org.layshaft.engine.teeth;

import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

/**
 * The teeth of one gear, as far as they are stated.
 *
 * @param name as it stands in a sentence: {@code the third gear}
 * @param moduleMm normal module in mm; of a bevel gear, transverse at the large end
 * @param helixDeg helix angle in degrees, of a bevel gear its spiral angle; 0 is straight cut
 * @param hand of helix or spiral; straight-cut teeth need none
 * @param pressureAngleDeg normal pressure angle in degrees
 * @param faceWidthMm of a bevel gear, along its teeth in mm; other gears need none
 * @param apex of a bevel gear, the end of its shaft that the point of its cone lies toward; other gears need none
 */
public record Toothing(
        String name,
        GearForm form,
        int teeth,
        OptionalDouble moduleMm,
        OptionalDouble helixDeg,
        Optional<Hand> hand,
        OptionalDouble pressureAngleDeg,
        OptionalDouble faceWidthMm,
        Optional<Side> apex) {

    /** Throws {@link ImpossibleFactsException} with everything that cannot be so. */
    public Toothing {
        new Objections()
                .unless(teeth > 0, "%s has %d teeth. It must have more than 0.", name, teeth)
                .unless(
                        moduleMm.orElse(1) > 0,
                        "The module of %s is %s mm. It must be more than 0.",
                        name,
                        in(moduleMm))
                .unless(
                        helixDeg.orElse(0) >= 0 && helixDeg.orElse(0) < 60,
                        "The helix angle of %s is %s degrees. It must be from 0 to below 60; its hand says which way it winds.",
                        name,
                        in(helixDeg))
                .unless(
                        pressureAngleDeg.orElse(20) > 0 && pressureAngleDeg.orElse(20) < 45,
                        "The pressure angle of %s is %s degrees. It must be more than 0 and below 45.",
                        name,
                        in(pressureAngleDeg))
                .unless(
                        faceWidthMm.orElse(0) >= 0,
                        "The face width of %s is %s mm. It must not be less than 0.",
                        name,
                        in(faceWidthMm))
                .refuse();
    }

    /** Teeth on a cylinder, everything stated. */
    public static Toothing external(
            String name, int teeth, double moduleMm, double helixDeg, Optional<Hand> hand, double pressureAngleDeg) {
        return new Toothing(
                name,
                GearForm.EXTERNAL,
                teeth,
                OptionalDouble.of(moduleMm),
                OptionalDouble.of(helixDeg),
                hand,
                OptionalDouble.of(pressureAngleDeg),
                OptionalDouble.empty(),
                Optional.empty());
    }

    boolean isBevel() {
        return form == GearForm.BEVEL;
    }

    boolean isSprocket() {
        return form == GearForm.SPROCKET;
    }

    boolean isInternal() {
        return form == GearForm.INTERNAL;
    }

    private static String in(OptionalDouble number) {
        return number.isPresent() ? Double.toString(number.getAsDouble()) : "";
    }
}
