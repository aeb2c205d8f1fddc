package org.layshaft.engine.involute;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.involute.Interference.Kind;

/** Gathers the interference of a pair. */
final class Interferences {
    private Interferences() {}

    static List<Interference> of(InvolutePair pair) {
        List<Interference> found = new ArrayList<>();
        LineOfAction line = pair.line();
        boolean pinionFirst = pair.pinion() == pair.first();
        if (line.matesTip() < line.pinionsForm()) {
            found.add(new Interference(
                    pinionFirst ? Kind.FILLET_OF_FIRST : Kind.FILLET_OF_SECOND,
                    diameterMm(pair.pinion(), line.matesTip()),
                    pair.pinion().formMm()));
        }
        if (line.pinionsTip() > line.matesForm()) {
            found.add(new Interference(
                    pinionFirst ? Kind.FILLET_OF_SECOND : Kind.FILLET_OF_FIRST,
                    diameterMm(pair.mate(), matesCurvature(pair, line.pinionsTip())),
                    pair.mate().formMm()));
        }
        clearance(found, Kind.TIP_OF_FIRST_IN_ROOT, pair.tipClearanceFirstMm());
        clearance(found, Kind.TIP_OF_SECOND_IN_ROOT, pair.tipClearanceSecondMm());
        if (pair.isInternal()) {
            clearance(found, Kind.TIPS_CROSS, InternalTips.of(pair).runningGapMm());
        }
        return List.copyOf(found);
    }

    private static void clearance(List<Interference> found, Kind kind, double gapMm) {
        if (gapMm < 0) {
            found.add(new Interference(kind, gapMm, 0));
        }
    }

    private static double matesCurvature(InvolutePair pair, double place) {
        double length = pair.centreMm() * Math.sin(pair.workingAngle());
        return pair.mate().isInternal() ? length + place : length - place;
    }

    /** Where on the gear the flank has this radius of curvature; past the base circle there is none, so that is told. */
    private static double diameterMm(InvoluteGear gear, double curvatureMm) {
        return Math.hypot(gear.baseMm(), 2 * Math.max(0, curvatureMm));
    }
}
