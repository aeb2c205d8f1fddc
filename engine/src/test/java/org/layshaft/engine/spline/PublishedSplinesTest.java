package org.layshaft.engine.spline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.spline.SplineEntry.Verdict;
import org.layshaft.engine.stated.ImpossibleFactsException;

/** Splines as published; what is from memory says so. */
class PublishedSplinesTest {

    /** ANSI B92.1-1970 (R1993), read at https://engineersedge.com/gears/involute_spline_13649.htm; in inches. */
    @Test
    void p01_flatRootSideFitAtThirtyDegrees() {
        Spline hub = SplineDesignation.parse("ANSI B92.1 INT 24T 12/24P 30 deg flat root side fit");
        Spline shaft = SplineDesignation.parse("ANSI B92.1 EXT 24T 12/24P 30 deg flat root side fit");
        inches(2.0000, hub.pitchMm());
        inches(1.7321, hub.baseMm());
        inches(2.1125, hub.majorMm());
        inches(2.0833, shaft.majorMm());
        inches(1.9167, hub.minorMm());
        inches(1.8875, shaft.minorMm());
        inches(Math.PI / 24, hub.toothOrSpaceMm());
    }

    /** The other columns of the same table. */
    @Test
    void p01_otherForms() {
        inches(25 / 12.0, major("INT 24T 12/24P 30 deg flat root major diameter fit"));
        inches(25.8 / 12, major("INT 24T 12/24P 30 deg fillet root side fit"));
        inches(25.6 / 12, major("INT 24T 12/24P 37.5 deg fillet root side fit"));
        inches(25.4 / 12, major("INT 24T 12/24P 45 deg fillet root side fit"));
    }

    /** DIN 5480 120 x 3 x 38; the designation read in several pages, the numbers from memory. */
    @Test
    void p03_dimensionsOfAShaftAndAHub() {
        Din5480 shaft = (Din5480) SplineDesignation.parse("DIN 5480 - W 120 x 3 x 38 x 8f");
        Spline hub = SplineDesignation.parse("DIN 5480 - N 120 x 3 x 38 x 9H");
        assertEquals(114, shaft.pitchMm(), 1e-9);
        assertEquals(98.727, shaft.baseMm(), 5e-4);
        assertEquals(0.45, shaft.shift(), 1e-9);
        assertEquals(119.4, shaft.majorMm(), 1e-9);
        assertEquals(114, hub.minorMm(), 1e-9);
        assertEquals(120, hub.majorMm(), 1e-9);
        assertEquals(113.4, shaft.minorMm(Din5480.Cutting.BROACHED), 1e-9);
        assertEquals(113.1, shaft.minorMm(Din5480.Cutting.HOBBED), 1e-9);
        assertEquals(112.8, shaft.minorMm(Din5480.Cutting.SHAPED), 1e-9);
        assertEquals(Verdict.ENTERS, SplineEntry.of(shaft, hub).verdict());
    }

    /** From memory: the shift lies from -0.05 to 0.45. A web page prints 48 x 2 x 24 as an example; there is no such spline. */
    @Test
    void p04_theReferenceDiameterRule() {
        assertEquals(0.45, SplineDesignation.parse("W 120x3x38").shift(), 1e-9);
        assertEquals(-0.05, SplineDesignation.parse("W 50x2x24").shift(), 1e-9);
        assertEquals(0.45, SplineDesignation.parse("W 48x2x22").shift(), 1e-9);
        assertEquals(
                List.of(
                        "48 x 2 x 24 needs a profile shift of -0.55. DIN 5480 has from -0.05 to 0.45: with 48 mm and module 2, 22 or 23 teeth; with 24 teeth, a reference diameter from 50 to 52 mm."),
                problems("W 48x2x24"));
    }

    /** ISO 4156-1:2005, read at https://pacificcert.com/iso-4156/: modules and angles. */
    @Test
    void p05_modulesAndAngles() {
        for (String module :
                List.of("0.5", "0.75", "1", "1.25", "1.5", "1.75", "2", "2.5", "3", "4", "5", "6", "8", "10")) {
            SplineDesignation.parse("EXT 24z x " + module + "m x 30P");
            SplineDesignation.parse("EXT 24z x " + module + "m x 37.5");
        }
        for (String module : List.of("0.25", "0.5", "0.75", "1", "1.25", "1.5", "1.75", "2", "2.5")) {
            SplineDesignation.parse("EXT 24z x " + module + "m x 45");
        }
        assertEquals(
                List.of("The module is 3 mm. At 45 degrees ISO 4156 has 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5."),
                problems("EXT 24z x 3m x 45"));
        assertEquals(
                List.of("The pressure angle in \"EXT 24z x 3m x 20\" is 20 degrees. ISO 4156 has 30, 37.5 and 45."),
                problems("EXT 24z x 3m x 20"));
    }

    /** The metric relations of the table of names and relations for ANSI metric splines, in a drawing program's help, read. */
    @Test
    void diametersOfMetricModuleSplines() {
        assertEquals(2.5 * 25.5, major("INT 24z x 2.5m x 30P"), 1e-9);
        assertEquals(2.5 * 25.8, major("INT 24z x 2.5m x 30R"), 1e-9);
        assertEquals(2.5 * 25.4, major("INT 24z x 2.5m x 37.5"), 1e-9);
        assertEquals(2.5 * 25.2, major("INT 24z x 2.5m x 45"), 1e-9);
        assertEquals(2.5 * 25, major("EXT 24z x 2.5m x 30P"), 1e-9);
        assertEquals(2.5 * 24.9, major("EXT 24z x 2.5m x 37.5"), 1e-9);
        assertEquals(2.5 * 24.8, major("EXT 24z x 2.5m x 45"), 1e-9);
        assertEquals(2.5 * 22.5, minor("EXT 24z x 2.5m x 30P"), 1e-9);
        assertEquals(2.5 * 22.2, minor("EXT 24z x 2.5m x 30R"), 1e-9);
        // the hub's tips follow from the form diameter, whose relation is from memory; recomputed
        assertEquals(57.736, minor("INT 24z x 2.5m x 30P"), 5e-4);
    }

    private static double major(String designation) {
        return SplineDesignation.parse(designation).majorMm();
    }

    private static double minor(String designation) {
        return SplineDesignation.parse(designation).minorMm();
    }

    private static void inches(double expected, double mm) {
        assertEquals(expected, mm / 25.4, 5e-5);
    }

    private static List<String> problems(String designation) {
        return assertThrows(ImpossibleFactsException.class, () -> SplineDesignation.parse(designation))
                .problems();
    }
}
