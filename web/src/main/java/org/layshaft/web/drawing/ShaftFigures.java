package org.layshaft.web.drawing;

import java.util.Optional;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Shaft;

/** Shafts as bars, thinner where they run inside another, and spindles held in the case. */
final class ShaftFigures {
    private static final double STUB = 24;
    private static final double SPINDLE_STUB = 16;
    private static final double GROUND = 5;

    private final Plan plan;
    private final Surroundings around;

    ShaftFigures(Plan plan, Surroundings around) {
        this.plan = plan;
        this.around = around;
    }

    Figure of(Shaft shaft) {
        Box bar = bar(shaft);
        Pen pen = insideAnother(shaft).map(bearing -> withNose(bar, bearing)).orElseGet(() -> Pen.around(bar));
        return new Figure(shaft, bar, Ink.SHAFT, svg -> {
            svg.path(pen, "class", "body");
            if (shaft.held()) {
                ground(svg, shaft, bar);
            }
        });
    }

    /** From end to end of a shaft. */
    Box bar(Shaft shaft) {
        double y = plan.carrierY(shaft.id());
        Box span = plan.span(shaft).orElseGet(() -> Box.about(around.gearing().x(), y, STUB, Sizes.SHAFT_RADIUS));
        if (shaft.held()) {
            return new Box(span.left() - room(shaft, -1), span.top(), span.right() + room(shaft, 1), span.bottom());
        }
        boolean fromClutch = plan.layout().input().equals(shaft.id());
        boolean toOutput = plan.layout().outputs().contains(shaft.id());
        double left = fromClutch ? around.clutchX() : span.left() - (meets(shaft, -1) ? 0 : STUB / 4);
        double right = toOutput ? around.outputX() : span.right() + (meets(shaft, 1) ? 0 : STUB);
        return new Box(left, span.top(), right, span.bottom());
    }

    /** Whether a shaft of the same line goes on at this end. */
    private boolean meets(Shaft shaft, int way) {
        double middle = plan.span(shaft).map(Box::x).orElse(0.0);
        return plan.lines().shafts(plan.lines().ofCarrier(shaft.id())).stream()
                .filter(other -> !other.id().equals(shaft.id()))
                .flatMap(other -> plan.span(other).stream())
                .anyMatch(other -> Math.signum(other.x() - middle) == way);
    }

    /** The bearing in which this shaft's end runs inside another. */
    private Optional<Bearing> insideAnother(Shaft shaft) {
        return Lines.between(plan.layout()).stream()
                .filter(bearing -> bearing.inner().equals(shaft.id()))
                .findFirst();
    }

    private Pen withNose(Box bar, Bearing bearing) {
        double y = bar.y();
        double nose = Sizes.NOSE_RADIUS;
        Box outer = plan.span(plan.layout().shaft(bearing.outer())).orElse(bar);
        boolean atFront = plan.x(bearing.id()) < bar.x();
        double shoulder = atFront ? outer.right() + 2 : outer.left() - 2;
        double tip = plan.x(bearing.id()) + (atFront ? -1 : 1) * plan.half(bearing.id());
        double far = atFront ? bar.right() : bar.left();
        return Pen.at(tip, y - nose)
                .across(shoulder)
                .upDown(bar.top())
                .across(far)
                .upDown(bar.bottom())
                .across(shoulder)
                .upDown(y + nose)
                .across(tip)
                .close();
    }

    /** How far a spindle can reach on before it meets something. */
    private double room(Shaft shaft, int way) {
        Box span = plan.span(shaft).orElseThrow();
        double from = way < 0 ? span.left() : span.right();
        Box reach = way < 0
                ? new Box(from - SPINDLE_STUB - GROUND, span.top() - GROUND, from, span.bottom() + GROUND)
                : new Box(from, span.top() - GROUND, from + SPINDLE_STUB + GROUND, span.bottom() + GROUND);
        String own = plan.lines().ofCarrier(shaft.id());
        boolean blocked = plan.covered(line -> !line.equals(own)).stream().anyMatch(other -> other.near(reach, 0));
        return blocked ? 2 : SPINDLE_STUB;
    }

    /** Hatches the case where it holds a spindle. */
    private void ground(Svg svg, Shaft shaft, Box bar) {
        Pen pen = new Pen();
        for (int way : new int[] {-1, 1}) {
            double end = way < 0 ? bar.left() : bar.right();
            if (room(shaft, way) < SPINDLE_STUB) {
                continue;
            }
            pen.move(end, bar.top() - GROUND).upDown(bar.bottom() + GROUND);
            for (double y = bar.top() - GROUND; y < bar.bottom() + GROUND; y += GROUND) {
                pen.move(end, y).line(end + way * GROUND, y + GROUND);
            }
        }
        svg.path(pen, "class", "ground", "fill", "none", "stroke-width", 1.2);
    }
}
