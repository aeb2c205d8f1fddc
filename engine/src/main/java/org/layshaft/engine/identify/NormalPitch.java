package org.layshaft.engine.identify;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.involute.DiametralPitch;
import org.layshaft.engine.stated.Shown;

/**
 * A standard size of teeth.
 *
 * @param nominal the module in mm, or the diametral pitch
 */
public record NormalPitch(Series series, double nominal) {

    /** Where a size of teeth is standard. */
    public enum Series {
        /** ISO 54, to be preferred. */
        MODULE_FIRST,
        /** ISO 54, second choice. */
        MODULE_SECOND,
        /** By the inch. */
        DIAMETRAL_PITCH
    }

    private static final double[] FIRST = {1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50};
    private static final double[] SECOND = {
        1.125, 1.375, 1.75, 2.25, 2.75, 3.5, 4.5, 5.5, 6.5, 7, 9, 11, 14, 18, 22, 28, 36, 45
    };
    private static final double[] PER_INCH = {2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 22, 24};
    private static final double TO_BE_AVOIDED = 6.5;

    /** Those of ISO 54, and the diametral pitches in common use that are no finer. */
    public static List<NormalPitch> standard() {
        List<NormalPitch> all = new ArrayList<>();
        add(all, Series.MODULE_FIRST, FIRST);
        add(all, Series.MODULE_SECOND, SECOND);
        add(all, Series.DIAMETRAL_PITCH, PER_INCH);
        return List.copyOf(all);
    }

    public double moduleMm() {
        return series == Series.DIAMETRAL_PITCH ? new DiametralPitch(nominal).moduleMm() : nominal;
    }

    /** ISO 54 has it and says to do without. */
    public boolean isToBeAvoided() {
        return series != Series.DIAMETRAL_PITCH && nominal == TO_BE_AVOIDED;
    }

    /** {@code module 2.5 mm} or {@code diametral pitch 10}. */
    public String words() {
        return series == Series.DIAMETRAL_PITCH
                ? "diametral pitch " + Shown.decimal(nominal)
                : "module " + Shown.decimal(nominal) + " mm";
    }

    private static void add(List<NormalPitch> all, Series series, double... nominals) {
        for (double nominal : nominals) {
            all.add(new NormalPitch(series, nominal));
        }
    }
}
