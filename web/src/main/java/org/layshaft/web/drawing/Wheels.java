package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Shaft;

/** Gears as one looks at their faces: with teeth what carries power, as a pitch circle what does not. */
final class Wheels {
    private static final double CROWN_THICK = 10;
    private static final double ARROW_SWEEP = Math.PI / 3;

    private final EndView end;
    private final Optional<Bodies> bodies;
    private final PowerPath path;
    private final InWords words;

    Wheels(EndView end, Optional<Bodies> bodies, PowerPath path, InWords words) {
        this.end = end;
        this.bodies = bodies;
        this.path = path;
        this.words = words;
    }

    /** Numbers and speeds keep off each other by this room. */
    void write(Svg svg, Room texts) {
        List<Gear> quiet = new ArrayList<>(end.wheels());
        List<Gear> loud = quiet.stream().filter(this::carries).toList();
        quiet.removeAll(loud);
        quiet.forEach(gear -> write(svg, gear));
        loud.forEach(gear -> write(svg, gear));
        svg.open("g", "class", "overlay", "pointer-events", "none");
        onePerBody(loud.isEmpty() ? largestTurning() : loud).forEach(gear -> arrow(svg, gear, texts));
        loud.forEach(gear -> number(svg, gear, texts));
        svg.close();
    }

    private boolean carries(Gear gear) {
        return path.passes(gear.id())
                || end.view()
                        .motion()
                        .filter(motion -> Bodies.carries(motion, gear.id()))
                        .isPresent();
    }

    private void write(Svg svg, Gear gear) {
        new PartElements(end.view(), words, path, bodies)
                .write(
                        svg,
                        new Figure(
                                gear,
                                Box.about(x(gear), y(gear), end.pitch(gear), end.pitch(gear)),
                                GearFigures.ink(gear),
                                shapes -> shape(shapes, gear)));
    }

    private void shape(Svg svg, Gear gear) {
        Optional<Axle> across = end.lines().axlesAcross().stream()
                .filter(axle -> axle.crown().equals(gear.id()))
                .findFirst();
        if (across.isPresent()) {
            crown(svg, gear, across.get());
        } else if (end.planets().isPlanet(gear.id())) {
            planets(svg, gear);
        } else {
            svg.open("g", spin(gear, speed(gear), x(gear), y(gear)));
            wheel(svg, gear, x(gear), y(gear));
            svg.close();
        }
    }

    /** An axle across lies in the plane that one looks at: its crown is seen on its edge. */
    private void crown(Svg svg, Gear gear, Axle axle) {
        double x = x(gear)
                + (axle.crownWay() > 0 ? -1 : 1) * (end.pitch(end.layout().gear(axle.pinion())) + CROWN_THICK);
        svg.rect(Box.about(x, y(gear), CROWN_THICK / 2, end.pitch(gear)), "class", "body", "fill-opacity", 0.35);
        svg.path(
                Pen.at(x(gear) - end.pitch(gear), y(gear)).across(x(gear) + end.pitch(gear)),
                "class",
                "pitch-line",
                "fill",
                "none",
                "stroke-width",
                0.8,
                "stroke-dasharray",
                "7 2 1.5 2");
    }

    private void planets(Svg svg, Gear gear) {
        Shaft spindle = end.layout().shaft(gear.carrier());
        Optional<Fraction> carrier = spindle.carriedBy()
                .flatMap(id -> bodies.flatMap(all -> all.speed(end.layout().shaft(id))));
        Optional<Fraction> own =
                speed(gear).map(speed -> carrier.map(speed::minus).orElse(speed));
        double start = spindleAngle(spindle);
        for (int at = 0; at < spindle.count(); at++) {
            double angle = start + 2 * Math.PI * at / spindle.count();
            double x = x(gear) + end.orbit(spindle) * Math.cos(angle);
            double y = y(gear) + end.orbit(spindle) * Math.sin(angle);
            svg.open("g", spin(gear, carrier, x(gear), y(gear)));
            svg.open("g", spin(gear, own, x, y));
            wheel(svg, gear, x, y);
            svg.close().close();
        }
    }

    /** Of two sets of planets that mesh with each other, the second is turned on till they touch. */
    private double spindleAngle(Shaft spindle) {
        double up = -Math.PI / 2;
        for (Shaft first : end.planets().spindles()) {
            if (first.equals(spindle)) {
                return up;
            }
            double touching = end.planets()
                    .gears(spindle)
                    .flatMap(gear -> end.planets()
                            .gears(first)
                            .filter(mate -> end.planets().mates(gear).anyMatch(mate.id()::equals))
                            .map(mate -> end.pitch(gear) + end.pitch(mate)))
                    .findFirst()
                    .orElse(0.0);
            if (touching > 0) {
                double a = end.orbit(first);
                double b = end.orbit(spindle);
                double cosine = (a * a + b * b - touching * touching) / (2 * a * b);
                return up + Math.acos(Math.max(-1, Math.min(1, cosine)));
            }
        }
        return up;
    }

    private void wheel(Svg svg, Gear gear, double x, double y) {
        double radius = end.pitch(gear);
        double deep = 2.25 * end.tooth(gear);
        boolean inside = gear.form() == GearForm.INTERNAL;
        boolean loud = carries(gear);
        if (!loud) {
            circle(
                    svg,
                    "body",
                    x,
                    y,
                    radius,
                    "fill",
                    inside ? "none" : null,
                    "fill-opacity",
                    0.12,
                    "stroke-width",
                    1.1);
            spoke(svg, x, y, radius, 0.6);
            return;
        }
        if (inside) {
            circle(svg, "body", x, y, radius + deep / 2 + 7, "fill", "none", "stroke-width", 2.2);
        } else {
            circle(svg, "body", x, y, radius - deep / 2, "fill-opacity", 0.85, "stroke-width", 1.4);
        }
        double half = Math.PI * radius / gear.teeth();
        circle(
                svg,
                "teeth-round",
                x,
                y,
                radius,
                "fill",
                "none",
                "stroke-width",
                deep,
                "stroke-dasharray",
                Svg.number(half) + " " + Svg.number(half));
        circle(
                svg,
                "pitch-line",
                x,
                y,
                radius,
                "fill",
                "none",
                "stroke",
                Ink.LINE,
                "stroke-width",
                0.7,
                "stroke-dasharray",
                "7 2 1.5 2");
        spoke(svg, x, y, radius - deep / 2, 2.2);
    }

    /** The number of its teeth, over the rim. */
    private void number(Svg svg, Gear gear, Room texts) {
        if (end.planets().isPlanet(gear.id()) || isCrown(gear)) {
            return;
        }
        Label label = new Label(List.of(gear.teeth() + "T"), 13, "name");
        List<Box> wishes = new ArrayList<>();
        for (double aside : new double[] {0.9, -0.9, 1.3, -1.3, 1.7, -1.7}) {
            Point at = at(gear, end.pitch(gear), away(gear) + ARROW_SWEEP * aside);
            wishes.add(label.box(at.x(), at.y() - label.height() / 2));
        }
        label.write(svg, texts.takeBest(wishes));
    }

    private boolean isCrown(Gear gear) {
        return end.lines().axlesAcross().stream().anyMatch(axle -> axle.crown().equals(gear.id()));
    }

    /** A painted line by which the eye follows the turning. */
    private static void spoke(Svg svg, double x, double y, double radius, double width) {
        svg.path(
                Pen.at(x, y - radius * 0.25).line(x, y - radius),
                "class",
                "spoke",
                "fill",
                "none",
                "stroke-width",
                width);
    }

    private static void circle(Svg svg, String name, double x, double y, double radius, Object... more) {
        Object[] all = new Object[8 + more.length];
        System.arraycopy(new Object[] {"class", name, "cx", x, "cy", y, "r", Math.max(1, radius)}, 0, all, 0, 8);
        System.arraycopy(more, 0, all, 8, more.length);
        svg.leaf("circle", all);
    }

    private static Object[] spin(Gear gear, Optional<Fraction> speed, double x, double y) {
        return new Object[] {
            "class",
            "spinning",
            "data-turns",
            speed.filter(turns -> !turns.isZero())
                    .map(turns -> turns.toDouble() + "")
                    .orElse(null),
            "data-x",
            x,
            "data-y",
            y
        };
    }

    /** One wheel for each line that turns, where nothing carries power. */
    private List<Gear> largestTurning() {
        List<String> lines = new ArrayList<>();
        return end.wheels().stream()
                .filter(gear -> !end.planets().isPlanet(gear.id()))
                .filter(gear -> speed(gear).filter(speed -> !speed.isZero()).isPresent())
                .filter(gear -> lines.contains(end.lines().of(gear))
                        ? false
                        : lines.add(end.lines().of(gear)))
                .toList();
    }

    /** Of wheels about one axis that turn alike only the largest, the others being seen to go with it. */
    private List<Gear> onePerBody(List<Gear> gears) {
        Set<String> told = new HashSet<>();
        return gears.stream()
                .filter(gear -> told.add(end.lines().of(gear) + speed(gear)))
                .toList();
    }

    /** An arc along the rim, away from what the gear meshes with. */
    private void arrow(Svg svg, Gear gear, Room texts) {
        Optional<Fraction> speed = speed(gear).filter(turns -> !turns.isZero());
        if (speed.isEmpty() || isCrown(gear) || end.planets().isPlanet(gear.id())) {
            return;
        }
        boolean asEngine = speed.get().signum() > 0;
        double radius = Math.max(14, end.pitch(gear) - 2.25 * end.tooth(gear) - 6);
        double middle = away(gear);
        double from = middle + (asEngine ? -ARROW_SWEEP : ARROW_SWEEP) / 2;
        double to = middle + (asEngine ? ARROW_SWEEP : -ARROW_SWEEP) / 2;
        Point start = at(gear, radius, from);
        Point stop = at(gear, radius, to);
        String arc = "M%s %sA%s %s 0 0 %d %s %s"
                .formatted(
                        Svg.number(start.x()),
                        Svg.number(start.y()),
                        Svg.number(radius),
                        Svg.number(radius),
                        asEngine ? 1 : 0,
                        Svg.number(stop.x()),
                        Svg.number(stop.y()));
        svg.open("g", "class", asEngine ? "turning as-engine" : "turning other-way", "data-turns-of", gear.id());
        svg.leaf("path", "d", arc, "class", "turning-halo", "fill", "none", "stroke", Ink.PAPER, "stroke-width", 5.0);
        svg.leaf("path", "d", arc, "class", "turning-line", "fill", "none", "stroke", Ink.LINE, "stroke-width", 2.2);
        Pen head = new Pen();
        double way = asEngine ? 1 : -1;
        Heads.solid(head, stop.x(), stop.y(), -Math.sin(to) * way, Math.cos(to) * way, 11);
        svg.path(
                head,
                "class",
                asEngine ? "turning-head solid" : "turning-head hollow",
                "fill",
                asEngine ? Ink.LINE : Ink.PAPER,
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.6);
        Label label = new Label(List.of(TurningArrows.times(speed.get())), 12, "speed");
        List<Box> wishes = new ArrayList<>();
        for (double aside : new double[] {0, 0.35, -0.35, 0.7, -0.7}) {
            Point place = at(gear, Math.max(0, radius - 18), middle + aside);
            wishes.add(label.box(place.x(), place.y() - label.height() / 2));
        }
        label.write(svg, texts.takeBest(wishes));
        svg.close();
    }

    private double away(Gear gear) {
        double sumX = 0;
        double sumY = 0;
        for (var mesh : end.made()) {
            if (mesh.joins(gear.id())) {
                Gear mate = end.layout().gear(mesh.other(gear.id()));
                sumX += x(mate) - x(gear);
                sumY += y(mate) - y(gear);
            }
        }
        return sumX == 0 && sumY == 0 ? -Math.PI / 2 : Math.atan2(-sumY, -sumX);
    }

    private Point at(Gear gear, double radius, double angle) {
        return new Point(x(gear) + radius * Math.cos(angle), y(gear) + radius * Math.sin(angle));
    }

    private Optional<Fraction> speed(Gear gear) {
        return bodies.flatMap(all -> all.speed(gear));
    }

    private double x(Gear gear) {
        return end.x(end.placeOf(end.lines().of(gear)));
    }

    private double y(Gear gear) {
        return end.y(end.placeOf(end.lines().of(gear)));
    }
}
