package org.layshaft.web.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;

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
        if (shaft.carriedBy().isPresent()) {
            return spindle(shaft);
        }
        if (shaft.held() && !plan.lines().held(plan.lines().ofCarrier(shaft.id()))) {
            return new CaseFigures(plan).seat(shaft);
        }
        Box bar = bar(shaft);
        double y = plan.carrierY(shaft.id());
        ShaftShape shape = new ShaftShape(plan, shaft);
        List<Box> boxes = shape.boxes(bar.left(), bar.right()).stream()
                .map(box -> box.moved(0, y))
                .toList();
        boolean plain = shape.isPlain() || boxes.isEmpty();
        List<Box> covers = plain ? List.of(bar) : boxes;
        Pen pen = insideAnother(shaft)
                .filter(bearing -> plain)
                .map(bearing -> withNose(bar, bearing))
                .orElseGet(() -> around(covers));
        return new Figure(shaft, plain ? bar : hull(boxes, y), Ink.SHAFT, covers, svg -> {
            svg.path(pen, "class", "body");
            if (shaft.held()) {
                ground(svg, shaft, bar);
            }
        });
    }

    private static Pen around(List<Box> boxes) {
        Pen pen = new Pen();
        boxes.forEach(pen::box);
        return pen;
    }

    /** A shaft's box lies about its axis, however far its drums and arms reach. */
    private static Box hull(List<Box> boxes, double y) {
        Box all = Box.of(boxes);
        return new Box(all.left(), y - Sizes.SHAFT_RADIUS, all.right(), y + Sizes.SHAFT_RADIUS);
    }

    private Figure spindle(Shaft spindle) {
        Box bar = Box.of(spindle.along().stream()
                        .map(id -> Box.about(plan.x(id), plan.y(id), plan.half(id), Sizes.SPINDLE_RADIUS))
                        .toList())
                .with(armOf(spindle));
        List<Box> both = plan.twinDistance(spindle.id())
                .map(down -> List.of(bar, bar.moved(0, down)))
                .orElse(List.of(bar));
        return new Figure(spindle, bar, Ink.SHAFT, both, svg -> svg.path(around(both), "class", "body"));
    }

    private Box armOf(Shaft spindle) {
        Stands.Stand arm = plan.planetSides().arm(spindle);
        return Box.about(arm.x(), plan.carrierY(spindle.id()), arm.right() - arm.x(), Sizes.SPINDLE_RADIUS);
    }

    /** From end to end of a shaft. */
    Box bar(Shaft shaft) {
        double y = plan.carrierY(shaft.id());
        Box span = span(shaft).orElseGet(() -> Box.about(around.gearing().x(), y, STUB, Sizes.SHAFT_RADIUS));
        if (shaft.held()) {
            return new Box(span.left() - room(shaft, -1), span.top(), span.right() + room(shaft, 1), span.bottom());
        }
        boolean fromClutch = plan.layout().input().equals(shaft.id());
        Optional<Side> exit = Optional.of(shaft).filter(plan.exits()::leaves).map(plan.exits()::end);
        double left = fromClutch
                ? around.clutchX()
                : exit.filter(Side.FRONT::equals).isPresent()
                        ? around.frontOutputX()
                        : span.left() - (meets(shaft, -1) || endsInPinion(shaft, false) ? 0 : STUB / 4);
        double right = exit.filter(Side.REAR::equals).isPresent()
                ? around.outputX()
                : span.right() + (meets(shaft, 1) || endsInPinion(shaft, true) ? 0 : STUB);
        return new Box(left, span.top(), right, span.bottom());
    }

    private boolean endsInPinion(Shaft shaft, boolean rear) {
        return plan.lines().axlesAcross().stream()
                .anyMatch(axle -> axle.atRear() == rear && shaft.along().contains(axle.pinion()));
    }

    /** What sits on a shaft and what it is tied to. */
    private Optional<Box> span(Shaft shaft) {
        double y = plan.carrierY(shaft.id());
        Stream<Box> tied = Stream.of(plan.nesting().stands(shaft.id()))
                .filter(stands -> !stands.all().isEmpty())
                .map(stands -> new Box(stands.left(), y - Sizes.SHAFT_RADIUS, stands.right(), y + Sizes.SHAFT_RADIUS));
        return Stream.concat(plan.span(shaft).stream(), tied).reduce(Box::with);
    }

    /** Whether a shaft of the same line goes on at this end. */
    private boolean meets(Shaft shaft, int way) {
        double middle = span(shaft).map(Box::x).orElse(0.0);
        return plan.lines().shafts(plan.lines().ofCarrier(shaft.id())).stream()
                .filter(other -> !other.id().equals(shaft.id()) && !other.held())
                .flatMap(other -> span(other).stream())
                .anyMatch(other -> Math.signum(other.x() - middle) == way);
    }

    /** The bearing in which this shaft's end runs inside another. */
    private Optional<Bearing> insideAnother(Shaft shaft) {
        return Lines.between(plan.layout()).stream()
                .filter(bearing -> bearing.inner().equals(shaft.id()))
                .filter(bearing -> !plan.nesting().within(bearing.outer()).contains(shaft.id()))
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
        Box span = span(shaft).orElseThrow();
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
