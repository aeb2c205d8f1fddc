package org.layshaft.web.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Side;

/** What lies behind the parts: the case with its walls, and the arrows of engine and output. */
final class Backdrop {
    private static final double HOUSING_HIGH = 78;
    /** What is left of the outlines above and below where housing and case are one. */
    private static final double JOINT = 8;

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
        plan.lines().axlesAcross().forEach(axle -> housing(svg, room, axle, box));
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
        arrow(svg, room, around.engineX(), inputY, 1, InWords.driver(plan.layout()));
        Exits exits = plan.exits();
        exits.shafts().forEach(shaft -> {
            boolean front = exits.end(shaft) == Side.FRONT;
            double x = front ? around.frontOutputX() - 34 : around.outputX() + 34;
            String says = exits.isTakeOff(shaft) ? "take-off" : "output";
            arrow(svg, room, x, plan.carrierY(shaft.id()), front ? -1 : 1, says);
        });
        svg.close();
    }

    /** The housing of an axle across, one with the case where the two meet. */
    private void housing(Svg svg, Room room, Axle axle, Box caseBox) {
        double y = plan.carrierY(axle.differential());
        Box box = Box.about(plan.x(axle.differential()), y, Axle.CROWN + 16, HOUSING_HIGH);
        svg.rect(box, "class", "case", "rx", 30.0, "fill", Ink.CASE, "stroke", Ink.CASE_LINE, "stroke-width", 1.5);
        edges(box).forEach(room::take);
        double top = Math.max(box.top(), caseBox.top() + 14);
        double bottom = Math.min(box.bottom(), caseBox.bottom() - 14);
        double left = Math.max(box.left(), caseBox.left()) - 1;
        double right = Math.min(box.right(), caseBox.right()) + 1;
        if (left < right) {
            Box shared = new Box(left, top + JOINT, right, bottom - JOINT);
            svg.rect(shared, "class", "case-inside", "fill", Ink.CASE);
        }
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

    private static void arrow(Svg svg, Room room, double x, double y, int way, String says) {
        Pen pen = Pen.at(x - way * 24, y - 6)
                .across(x)
                .upDown(y - 13)
                .line(x + way * 20, y)
                .line(x, y + 13)
                .upDown(y + 6)
                .across(x - way * 24)
                .close();
        svg.path(pen, "class", "way", "fill", Ink.PAPER, "stroke", Ink.LINE, "stroke-width", 1.5);
        Label label = new Label(List.of(says), 13.5, "name");
        room.take(Box.about(x, y, 26, 14));
        label.write(svg, room.take(label.box(x - 2, y - 33)));
    }
}
