package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.teeth.SomeTeeth.forces;
import static org.layshaft.engine.teeth.SomeTeeth.helical;
import static org.layshaft.engine.teeth.SomeTeeth.spur;
import static org.layshaft.engine.teeth.SomeTeeth.straightBevel;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

/**
 * Tooth forces that somebody else has printed. Those in pounds and inches are reckoned with a torque of pound-inches
 * over 1000 and a module in inches: the formulas then give pounds.
 */
class PublishedForcesTest {

    /** F-01: U. C. Jindal, Machine Design, example 26-2, page 698. */
    @Test
    void f01HelicalGear() {
        ToothForce force = forces(new LoadedPair(
                        helical("pinion", 25, Hand.RIGHT),
                        helical("gear", 50, Hand.LEFT),
                        torqueNm(5000, 1200),
                        Turn.CLOCKWISE))
                .onDriver();
        assertPrinted("747.78", force.tangentialN());
        assertPrinted("272.2", force.axialN());
        assertPrinted("289.64", force.radialN());
    }

    /** F-03: T. H. Wentzell, Machine Design, example 12.1, page 254; 63000 is Wentzell's constant. */
    @Test
    void f03SpurGear() {
        ToothForce force = forces(new LoadedPair(
                        spur("pinion", 20, 1 / 8.0),
                        spur("gear", 40, 1 / 8.0),
                        poundInches(5, 1725) / 1000,
                        Turn.CLOCKWISE))
                .onDriver();
        assertPrinted("146.09", force.tangentialN());
        assertPrinted("53.17", force.radialN());
        assertPrinted("155.46", force.totalN());
        assertEquals(0, force.axialN());
    }

    /** F-04: R. S. Khurmi and J. K. Gupta, Theory of Machines, example 12.1, page 393; 250 mm are 25 teeth of 10. */
    @Test
    void f04TotalForceOnSpurTeeth() {
        ToothForce force = forces(new LoadedPair(
                        spur("pinion", 25, 10), spur("gear", 50, 10), torqueNm(120_000, 650), Turn.CLOCKWISE))
                .onDriver();
        assertPrinted("15.01", force.totalN() / 1000);
    }

    /** F-05: Wentzell, example 13.3, page 286, reckoned at the large end: no face width. */
    @Test
    void f05BevelPairAtTheLargeEnd() {
        PairForces forces = forces(new LoadedPair(
                straightBevel("pinion", 24, 1 / 8.0, 14.5, 0, Side.REAR),
                straightBevel("gear", 36, 1 / 8.0, 14.5, 0, Side.REAR),
                poundInches(8, 2200) / 1000,
                Turn.CLOCKWISE,
                OptionalDouble.of(90)));
        assertPrinted("152.73", forces.onDriver().tangentialN());
        // the print takes the cone as 33.7 degrees, 33.690 truly
        assertEquals(32.86, forces.onDriver().radialN(), 0.011);
        assertEquals(21.92, forces.onDriver().axialN(), 0.011);
        assertEquals(21.92, forces.onDriven().radialN(), 0.011);
        assertEquals(32.86, forces.onDriven().axialN(), 0.011);
    }

    /** F-06: Jindal, example 27-1, page 712: pitch radius 200, face a fifth of the cone's side, so 180 at its middle. */
    @Test
    void f06BevelPairAtTheMiddleOfTheFace() {
        double coneSide = 200 / Math.sin(Math.atan(0.5));
        ToothForce force = forces(new LoadedPair(
                        straightBevel("pinion", 20, 20, 20, coneSide / 5, Side.REAR),
                        straightBevel("gear", 40, 20, 20, coneSide / 5, Side.REAR),
                        torqueNm(8000, 400),
                        Turn.CLOCKWISE,
                        OptionalDouble.of(90)))
                .onDriver();
        assertEquals(180, force.atRadiusMm(), 1e-9);
        assertPrinted("1061", force.tangentialN());
        assertPrinted("386.2", Math.hypot(force.radialN(), force.axialN()));
        assertEquals(386.18, Math.hypot(force.radialN(), force.axialN()), 0.02);
        assertEquals(345.41, force.radialN(), 0.02);
        assertEquals(172.71, force.axialN(), 0.02);
    }

    private static double torqueNm(double watts, double rpm) {
        return watts * 60 / (2 * Math.PI * rpm);
    }

    private static double poundInches(double horsepower, double rpm) {
        return 63_000 * horsepower / rpm;
    }

    private static void assertPrinted(String printed, double reckoned) {
        BigDecimal wanted = new BigDecimal(printed);
        assertEquals(wanted, BigDecimal.valueOf(reckoned).setScale(wanted.scale(), RoundingMode.HALF_UP));
    }
}
