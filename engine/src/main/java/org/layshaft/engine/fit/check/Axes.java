package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Meeting;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Sleeve;

/**
 * How far apart the case holds the axes of the two gears of a mesh.
 *
 * @param mm NaN where it is missing, which has been noted
 */
record Axes(double mm, double toleranceMm) {

    static Axes asked(Judging judging) {
        Meeting mesh = judging.meeting();
        Layout layout = judging.now().layout();
        Held lines = judging.centre(shaftOf(layout, mesh.one()), shaftOf(layout, mesh.other()));
        return new Axes(lines.number(FactName.CENTRE_MM), lines.number(FactName.CENTRE_TOLERANCE_MM));
    }

    double smallestMm() {
        return mm - toleranceMm;
    }

    double largestMm() {
        return mm + toleranceMm;
    }

    /** A rim turns about the shaft of its sleeve. */
    private static String shaftOf(Layout layout, String gear) {
        String carrier = ((Gear) layout.parts().get(gear)).carrier();
        return layout.parts().get(carrier) instanceof Sleeve sleeve ? sleeve.shaft() : carrier;
    }
}
