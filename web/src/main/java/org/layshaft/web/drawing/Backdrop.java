package org.layshaft.web.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Shaft;

/** What lies behind the parts: the case with its walls, and the arrows of engine and output. */
final class Backdrop {
    private final Plan plan;
    private final Surroundings around;

    Backdrop(Plan plan, Surroundings around) {
        this.plan = plan;
        this.around = around;
    }

    void write(Svg svg, Room room) {
        Box box = around.caseBox();
        svg.open("g", "class", "backdrop", "aria-hidden", "true");
        svg.rect(box, "class", "case", "rx", 14.0, "fill", Ink.CASE, "stroke", Ink.CASE_LINE, "stroke-width", 1.5);
        edges(box).forEach(room::take);
        Walls walls = new Walls(plan.layout(), plan.lines());
        Stream.of(walls.front(), walls.rear())
                .filter(bearings -> !bearings.isEmpty())
                .forEach(bearings -> {
                    double x = plan.restX(bearings.get(0));
                    svg.path(
                            Pen.at(x, box.top()).upDown(box.bottom()),
                            "class",
                            "wall",
                            "stroke",
                            Ink.CASE_LINE,
                            "stroke-width",
                            6.0,
                            "stroke-opacity",
                            0.35);
                });
        double inputY = plan.carrierY(plan.layout().input());
        arrow(svg, room, around.engineX(), inputY, "engine");
        plan.layout().outputs().stream()
                .filter(output -> plan.layout().find(Shaft.class, output).isPresent())
                .forEach(output -> arrow(svg, room, around.outputX() + 34, plan.carrierY(output), "output"));
        svg.close();
    }

    /** The outline of the case, which no name should cross. */
    private static Stream<Box> edges(Box box) {
        double half = 1;
        return Stream.of(
                new Box(box.left(), box.top() - half, box.right(), box.top() + half),
                new Box(box.left(), box.bottom() - half, box.right(), box.bottom() + half),
                new Box(box.left() - half, box.top(), box.left() + half, box.bottom()),
                new Box(box.right() - half, box.top(), box.right() + half, box.bottom()));
    }

    private static void arrow(Svg svg, Room room, double x, double y, String says) {
        Pen pen = Pen.at(x - 24, y - 6)
                .across(x)
                .upDown(y - 13)
                .line(x + 20, y)
                .line(x, y + 13)
                .upDown(y + 6)
                .across(x - 24)
                .close();
        svg.path(pen, "class", "way", "fill", Ink.PAPER, "stroke", Ink.LINE, "stroke-width", 1.5);
        Label label = new Label(List.of(says), 13.5, "name");
        room.take(Box.about(x, y, 26, 14));
        label.write(svg, room.take(label.box(x - 2, y - 33)));
    }
}
