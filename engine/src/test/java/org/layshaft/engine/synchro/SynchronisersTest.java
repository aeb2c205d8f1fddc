package org.layshaft.engine.synchro;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.stated.ImpossibleFactsException;

class SynchronisersTest {

    @Test
    void moreSurfacesMoreTorque() {
        assertEquals(3 * Cone.single(6.5, 60, 0.1).torqueNm(100), new Cone(6.5, 60, 0.1, 3).torqueNm(100), 1e-12);
    }

    @Test
    void theForceForATorqueIsTheOneThatGivesIt() {
        Cone triple = new Cone(6.5, 60, 0.1, 3);
        assertEquals(40, triple.torqueNm(triple.holdingForceN(40)), 1e-12);
        assertEquals(Cone.single(6.5, 60, 0.1).widthMm(40, 2) / 3, triple.widthMm(40, 2), 1e-12);
    }

    @Test
    void dragHindersOrHelps() {
        Synchronising against = new Synchronising(0.005, 1500, 2);
        Synchronising along = new Synchronising(0.005, 1500, -2);
        assertTrue(against.timeS(5).orElseThrow() > along.timeS(5).orElseThrow());
        assertTrue(against.timeS(2).isEmpty());
        assertTrue(against.heatJ(2).isEmpty());
    }

    @Test
    void chamfersThatJamAlwaysBlock() {
        assertEquals(
                Double.POSITIVE_INFINITY,
                new Blocking(Cone.single(6.5, 60, 0.1), new Chamfer(89, 68, 0.1)).marginRatio());
    }

    /** A tenth of a millimetre off the surface brings the ring most of a millimetre nearer. */
    @Test
    void wearOfTheConeTakesTheReserve() {
        assertEquals(0.883, Cone.single(6.5, 60, 0.1).reserveLostMm(0.1), 5e-4);
    }

    @Test
    void whatCannotBeSoIsToldAtOnce() {
        assertEquals(
                List.of(
                        "The cone angle is 0 degrees. It must be more than 0 and below 90, from axis to surface.",
                        "The cone diameter is -60 mm. It must be more than 0.",
                        "The coefficient of friction is 0. It must be more than 0.",
                        "The number of cone surfaces is 0. It must be at least 1."),
                problems(() -> new Cone(0, -60, 0, 0)));
        assertEquals(
                List.of(
                        "The chamfer angle is 90 degrees. It must be more than 0 and below 90, from axis to chamfer.",
                        "The diameter of the chamfers is 0 mm. It must be more than 0."),
                problems(() -> new Chamfer(90, 0, 0.1)));
        assertEquals(
                List.of("The inertia is 0 kg m2. It must be more than 0."),
                problems(() -> Synchronising.withoutDrag(0, 100)));
    }

    private static List<String> problems(Runnable making) {
        return assertThrows(ImpossibleFactsException.class, making::run).problems();
    }
}
