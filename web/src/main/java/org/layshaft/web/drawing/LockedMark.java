package org.layshaft.web.drawing;

import java.util.List;
import org.layshaft.engine.api.Motion;

/** A hatched case and a padlock, where input or output can only stand still. */
record LockedMark(Surroundings around, String idPrefix) {

    /** A padlock with what is locked, where it hides least. */
    void write(Svg svg, Room room, Motion.Outcome outcome) {
        String says = switch (outcome) {
            case LOCKED -> "locked";
            case INPUT_HELD -> "input held";
            case OUTPUT_HELD -> "output held";
            case DRIVES, NEUTRAL -> "";
        };
        if (says.isEmpty()) {
            return;
        }
        Box gearing = around.gearing();
        svg.rect(
                around.caseBox(),
                "class",
                "locked-hatch",
                "rx",
                14.0,
                "fill",
                "url(#" + idPrefix + "hatch)",
                "pointer-events",
                "none");
        Label label = new Label(List.of(says), 18, "locked-word");
        Box best = null;
        double least = Double.MAX_VALUE;
        for (double y = gearing.top() + 26; y < gearing.bottom() - 20; y += 12) {
            for (double x = gearing.left() + 70; x < gearing.right() - 70; x += 12) {
                Box box = Box.about(x, y, label.width() / 2 + 34, 24);
                if (room.covered(box) < least) {
                    least = room.covered(box);
                    best = box;
                }
            }
        }
        padlock(svg, room.take(best), label);
    }

    private static void padlock(Svg svg, Box box, Label label) {
        double x = box.left() + 26;
        double y = box.y() + 4;
        svg.open("g", "class", "locked", "stroke", Ink.LINE, "stroke-width", 2.5, "pointer-events", "none");
        svg.rect(box, "class", "locked-plate", "rx", 8.0, "fill", Ink.PAPER);
        svg.path(
                Pen.at(x - 7, y - 5)
                        .upDown(y - 9)
                        .curve(x - 7, y - 18, x, y - 18)
                        .curve(x + 7, y - 18, x + 7, y - 9)
                        .upDown(y - 5),
                "fill",
                "none");
        svg.rect(Box.about(x, y + 3, 11, 8), "class", "locked-body", "rx", 2.0, "fill", Ink.LINE);
        svg.open("g", "stroke", "none", "font-weight", "bold");
        label.write(svg, label.box(box.x() + 14, box.y() - label.height() / 2));
        svg.close().close();
    }

    static void pattern(Svg svg, String idPrefix) {
        svg.open("defs");
        svg.open("pattern", "id", idPrefix + "hatch", "width", 12.0, "height", 12.0, "patternUnits", "userSpaceOnUse");
        svg.path(
                Pen.at(0, 12).line(12, 0),
                "class",
                "hatch-line",
                "fill",
                "none",
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.0,
                "stroke-opacity",
                0.45);
        svg.close().close();
    }
}
