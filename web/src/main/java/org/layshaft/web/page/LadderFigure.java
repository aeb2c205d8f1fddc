package org.layshaft.web.page;

import java.util.List;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.words.Names;
import org.layshaft.web.chart.RatioLadder;
import org.layshaft.web.chart.RatioLadder.Ladder;
import org.layshaft.web.chart.RatioLadder.Rung;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.page.RoadView.FigureView;

/** The ratios of a box, or of several, as rungs of a ladder. */
final class LadderFigure {
    private static final String CAPTION = "A filled rung drives forward, a hollow one backward.";

    private LadderFigure() {}

    /** Of one box whose ratios stand in a table already. */
    static FigureView of(Box box) {
        return new FigureView(
                "ladder", "Steps between the gears", svg(List.of(box)), CAPTION, null, List.of(), List.of());
    }

    /** Of two, one above the other on one scale. */
    static FigureView of(Box one, Box other) {
        return new FigureView(
                "ladder", "Steps between the gears", svg(List.of(one, other)), CAPTION, null, List.of(), List.of());
    }

    private static String svg(List<Box> boxes) {
        return new RatioLadder(boxes.stream().map(LadderFigure::ladder).toList())
                .svg(
                        "ladder",
                        "Ratios of "
                                + Names.joined(boxes.stream()
                                        .map(box -> box.layout().name())
                                        .distinct()
                                        .toList()),
                        boxes.stream().map(LadderFigure::words).collect(Collectors.joining(" ")));
    }

    private static Ladder ladder(Box box) {
        return new Ladder(
                box.layout().name(),
                box.gears().stream().map(LadderFigure::rung).toList());
    }

    private static Rung rung(DerivedGear gear) {
        return new Rung(
                gear.name(),
                gear.ratio().toDouble(),
                gear.direction() == Direction.REVERSE,
                "%s: %s".formatted(Names.gearName(gear.name()), Decimals.three(gear.ratio())));
    }

    private static String words(Box box) {
        return box.gears().stream()
                .map(gear -> "%s %s".formatted(Names.gearName(gear.name()), Decimals.three(gear.ratio())))
                .collect(Collectors.joining(", ", box.layout().name() + ": ", "."));
    }
}
