package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.involute.SomeGears.ring;
import static org.layshaft.engine.involute.SomeGears.spur;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.kb.layout.GearForm;

/** What makes no gear or no pair is refused with the value; what has no answer has none. */
class ImpossibleGearsTest {

    @Test
    void everythingThatCannotBeSoIsToldAtOnce() {
        assertEquals(
                List.of(
                        "The form is bevel. It must be external or internal: teeth on a cylinder.",
                        "The number of teeth is 2. It must be at least 3.",
                        "The module is -1 mm. It must be more than 0.",
                        "The pressure angle is 60 degrees. It must be from 5 to 50.",
                        "The helix angle is -20 degrees. It must be from 0 to 60; the hand is stated apart.",
                        "The profile shift coefficient is 6. It must be from -5 to 5, in modules."),
                problems(() -> InvoluteGear.of(GearForm.BEVEL, 2, -1, 60, -20, 6)));
    }

    @Test
    void notANumberIsNoModule() {
        assertEquals(List.of("The module is NaN mm. It must be more than 0."), problems(() -> spur(Double.NaN, 20, 0)));
    }

    @Test
    void aTipMustLieOutsideTheRootOrForInternalTeethInsideIt() {
        assertEquals(
                List.of(
                        "The tip diameter is 34 mm. It must be more than the root diameter, 35 mm.",
                        "The tip diameter is 34 mm. It must be more than the base diameter, 37.5877 mm, or no involute is left."),
                problems(() -> spur(2, 20, 0).withTipMm(34)));
        assertEquals(
                List.of(
                        "The tip diameter is 90 mm. It must lie inside the root diameter of the internal teeth, 85 mm."),
                problems(() -> ring(2, 40, 0).withTipMm(90)));
    }

    @Test
    void gearsThatNeverMeshAreRefused() {
        InvoluteGear odd = InvoluteGear.of(GearForm.EXTERNAL, 30, 2.5, 17.5, 15, 0);
        assertEquals(
                List.of(
                        "The modules are 2 and 2.5 mm. Gears that mesh have one normal module.",
                        "The pressure angles are 20 and 17.5 degrees. Gears that mesh have one normal pressure angle.",
                        "The helix angles are 0 and 15 degrees. Gears that mesh on parallel shafts have one helix angle."),
                problems(() -> new InvolutePair(spur(2, 20, 0), odd, 60)));
        assertEquals(
                List.of("Both gears are internal. At least one must have its teeth outside."),
                problems(() -> new InvolutePair(ring(2, 20, 0), ring(2, 40, 0), 20)));
        assertEquals(
                List.of("The gears have 40 and 40 teeth. The internal one must have more than the one inside it."),
                problems(() -> new InvolutePair(spur(2, 40, 0), ring(2, 40, 0), 20)));
    }

    @Test
    void axesTooNearHaveNoPair() {
        InvoluteGear gear = spur(2, 20, 0);
        assertTrue(InvolutePair.at(gear, gear, 37).isEmpty());
        assertTrue(InvolutePair.at(gear, gear, 37.6).isPresent());
        assertTrue(InvolutePair.shiftSumAt(gear, gear, 37).isEmpty());
        assertEquals(
                List.of(
                        "The centre distance is 37 mm. Teeth like these touch only from 37.5877 mm on: nearer, no tangent passes between the base circles."),
                problems(() -> new InvolutePair(gear, gear, 37)));
    }

    @Test
    void teethTooThinForAnyDistanceHaveNone() {
        InvoluteGear thin = spur(2, 20, -0.6);
        assertTrue(InvolutePair.centreMmWithoutBacklash(thin, thin).isEmpty());
    }

    private static List<String> problems(Runnable making) {
        return assertThrows(ImpossibleFactsException.class, making::run).problems();
    }
}
