package org.layshaft.kb.check;

import java.math.BigDecimal;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Rolling;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedBearing;
import org.layshaft.kb.typed.TypedItem;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** Balls and rollers that no bearing can have: too large for their circle, or too many on it. */
final class RollingElements implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedShaft shaft : layout.shafts()) {
            for (TypedItem item : shaft.along()) {
                if (item instanceof TypedBearing bearing) {
                    bearing.rolling().ifPresent(rolling -> check(bearing, rolling, report));
                }
            }
        }
    }

    private static void check(TypedBearing bearing, Rolling rolling, Report report) {
        if (rolling.elementMm().isEmpty() || rolling.pitchMm().isEmpty()) {
            return;
        }
        BigDecimal element = rolling.elementMm().get();
        BigDecimal pitch = rolling.pitchMm().get();
        String pointer = Pointers.child(bearing.pointer(), "rolling");
        if (element.compareTo(pitch) >= 0) {
            report.broken(
                    Pointers.child(pointer, "element_mm"),
                    "A ball or roller of '%s' is %s mm across, and the circle on which they run only %s mm: there is no room for a shaft."
                            .formatted(bearing.id(), element.toPlainString(), pitch.toPlainString()),
                    element.toPlainString(),
                    "Type an 'element_mm' below 'pitch_mm'; the pitch circle goes through the middles of the balls or rollers.");
        } else if (rolling.count().isPresent()) {
            crowding(bearing, rolling.count().getAsInt(), element, pitch, pointer, report);
        }
    }

    /** Side by side, middles lie at least one diameter apart: that many chords of the pitch circle. */
    private static void crowding(
            TypedBearing bearing, int count, BigDecimal element, BigDecimal pitch, String pointer, Report report) {
        int most = (int) Math.floor(Math.PI / Math.asin(element.doubleValue() / pitch.doubleValue()));
        if (count > most) {
            report.broken(
                    Pointers.child(pointer, "count"),
                    "%d balls or rollers of %s mm do not fit into '%s', on a circle of %s mm: there is room for at most %d."
                            .formatted(count, element.toPlainString(), bearing.id(), pitch.toPlainString(), most),
                    Integer.toString(count),
                    "Count those of one row, and measure a ball or roller, and the circle through their middles, again.");
        }
    }
}
