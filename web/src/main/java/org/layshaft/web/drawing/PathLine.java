package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** The line that runs through the parts that carry power: along shafts, across meshes, through teeth, sleeve and hub. */
final class PathLine {
    private final Plan plan;
    private final Surroundings around;
    private final Figures figures;
    private final MeshLinks links;

    PathLine(Plan plan, Surroundings around, Figures figures) {
        this.plan = plan;
        this.around = around;
        this.figures = figures;
        this.links = new MeshLinks(plan, figures);
    }

    List<Point> points(List<String> way) {
        List<Point> points = new ArrayList<>();
        for (int at = 0; at < way.size(); at++) {
            for (Point point : of(way, at)) {
                if (points.isEmpty() || !points.get(points.size() - 1).near(point)) {
                    points.add(point);
                }
            }
        }
        return points;
    }

    private List<Point> of(List<String> way, int at) {
        Layout layout = plan.layout();
        Part part = layout.parts().get(way.get(at));
        if (part instanceof Gear gear) {
            return gear(way, at, gear);
        }
        if (part instanceof Shaft shaft && shaft.carriedBy().isPresent()) {
            Stands.Stand stand = plan.planetSides().arm(shaft);
            String carrier = shaft.carriedBy().orElseThrow();
            double foot = new ShaftShape(plan, layout.shaft(carrier)).reach(stand);
            double axis = plan.carrierY(carrier);
            List<Point> arm = new ArrayList<>(List.of(
                    new Point(stand.x(), plan.carrierY(shaft.id())),
                    new Point(stand.x(), foot > 2 * Sizes.SHAFT_RADIUS + 5 ? axis - foot : axis)));
            if (at > 0 && way.get(at - 1).equals(shaft.carriedBy().orElseThrow())) {
                Collections.reverse(arm);
            }
            return arm;
        }
        if (part instanceof Shaft shaft) {
            Box bar = figures.box(shaft.id());
            List<Point> ends = new ArrayList<>();
            boolean front = plan.exits().leaves(shaft) && plan.exits().end(shaft) == Side.FRONT;
            Point first = new Point(bar.left(), bar.y());
            Point last = new Point(front ? bar.left() : bar.right(), bar.y());
            if (at == 0) {
                ends.add(first);
            }
            Optional<Double> from = at == 0 ? Optional.of(first.x()) : standing(shaft, way.get(at - 1));
            Optional<Double> to = at == way.size() - 1 ? Optional.of(last.x()) : standing(shaft, way.get(at + 1));
            if (from.isPresent() && to.isPresent()) {
                ends.addAll(roundBells(shaft, from.get(), to.get()));
            }
            if (at == way.size() - 1) {
                ends.add(last);
            }
            return ends;
        }
        if (part instanceof Sleeve sleeve) {
            double y = plan.carrierY(sleeve.shaft());
            return List.of(new Point(plan.restX(sleeve.id()), y + side(way, at) * inTeeth()));
        }
        if (part instanceof DogRing dogs) {
            return dogRing(way, at, dogs);
        }
        if (part instanceof Hub hub) {
            return List.of(new Point(plan.restX(hub.sleeve()), plan.carrierY(hub.shaft())));
        }
        if (part instanceof Clutch clutch && clutch.drivenBy().isPresent()) {
            double x = plan.x(clutch.id());
            double y = plan.carrierY(clutch.drives());
            double out = InnerClutch.RADIUS - 14;
            return List.of(
                    new Point(x - InnerClutch.HALF - 3, y),
                    new Point(x - InnerClutch.HALF - 3, y - out),
                    new Point(x + InnerClutch.HALF - 2, y - out),
                    new Point(x + InnerClutch.HALF - 2, y));
        }
        if (part instanceof Clutch clutch) {
            return List.of(new Point(around.clutchX() - 28, plan.carrierY(clutch.drives())));
        }
        if (part instanceof Differential differential) {
            return List.of(new Point(plan.x(differential.id()), plan.carrierY(differential.id())));
        }
        if (part instanceof HalfShaft half) {
            Box bar = figures.box(half.id());
            if (plan.lines().across(half.differential()).isPresent()) {
                boolean down = bar.y() > plan.carrierY(half.differential());
                return List.of(new Point(bar.x(), down ? bar.bottom() - 18 : bar.top() + 18));
            }
            double end = bar.x() < plan.x(half.differential()) ? bar.left() + 18 : bar.right() - 18;
            return List.of(new Point(end, bar.y()));
        }
        return List.of();
    }

    /** Over the drums that lie between two places on a shaft. */
    private List<Point> roundBells(Shaft shaft, double from, double to) {
        double y = plan.carrierY(shaft.id());
        List<Point> points = new ArrayList<>();
        new ShaftShape(plan, shaft)
                .bells().stream()
                        .filter(bell -> bell.left() + bell.right() > 2 * Math.min(from, to)
                                && bell.left() + bell.right() < 2 * Math.max(from, to))
                        .forEach(bell -> {
                            double wall = y - bell.radius() - Bell.WALL / 2;
                            double left = bell.left() + Bell.WALL / 2;
                            double right = bell.right() - Bell.WALL / 2;
                            down(bell.fromRadius()).ifPresent(foot -> points.add(new Point(left, y)));
                            points.add(new Point(left, wall));
                            points.add(new Point(right, wall));
                            down(bell.toRadius()).ifPresent(foot -> points.add(new Point(right, y)));
                        });
        if (from > to) {
            Collections.reverse(points);
        }
        return points;
    }

    /** Present where a drum's web comes down to the shaft itself. */
    private Optional<Double> down(double radius) {
        return Optional.of(radius).filter(foot -> foot < plan.hubRadius());
    }

    /** Where a part is tied to a shaft: a hub stands where its sleeve does. */
    private Optional<Double> standing(Shaft shaft, String part) {
        String id = plan.layout().find(Hub.class, part).map(Hub::sleeve).orElse(part);
        return plan.nesting().stands(shaft.id()).all().stream()
                .filter(stand -> stand.id().equals(id))
                .findFirst()
                .map(Stands.Stand::x);
    }

    /** By its teeth, and by its shaft unless it hangs in a drum. */
    private List<Point> dogRing(List<String> way, int at, DogRing dogs) {
        double x = plan.x(dogs.id());
        double y = plan.y(dogs.id());
        Point teeth = new Point(x, y - inTeeth());
        if (new ShaftShape(plan, plan.layout().shaft(dogs.shaft())).hangs(dogs.id())) {
            return List.of(teeth);
        }
        Point axis = new Point(x, y);
        return isShaft(way, at - 1) ? List.of(axis, teeth) : List.of(teeth, axis);
    }

    private List<Point> gear(List<String> way, int at, Gear gear) {
        List<Point> points = new ArrayList<>();
        double x = plan.x(gear.id());
        double y = plan.gearY(gear.id());
        if (plan.lines().across(gear.carrier()).isPresent()) {
            return isGear(way.get(Math.max(0, at - 1))) ? links.between(way.get(at - 1), gear.id()) : List.of();
        }
        if (gear.form() == GearForm.INTERNAL) {
            return ring(way, at, gear);
        }
        if (at > 0 && isGear(way.get(at - 1))) {
            points.addAll(links.between(way.get(at - 1), gear.id()));
        }
        boolean besideBore = gear.seat() == Seat.RIM || isTeeth(way, at - 1) || isTeeth(way, at + 1);
        boolean alongShaft = isShaft(way, at - 1) || isShaft(way, at + 1);
        Point inBore = new Point(x, y + turningPoint(way, at));
        Point aside = new Point(x, y + side(way, at) * inTeeth());
        if (besideBore && alongShaft) {
            points.addAll(isShaft(way, at - 1) ? List.of(inBore, aside) : List.of(aside, inBore));
        } else {
            points.add(besideBore ? aside : inBore);
        }
        return points;
    }

    /** From the teeth of a ring along its web, or the other way. */
    private List<Point> ring(List<String> way, int at, Gear gear) {
        List<Point> points = new ArrayList<>();
        boolean comesIn = at > 0 && isGear(way.get(at - 1));
        boolean goesOut = at < way.size() - 1 && isGear(way.get(at + 1));
        if (comesIn) {
            points.addAll(links.between(way.get(at - 1), gear.id()));
        }
        if (comesIn != goesOut && plan.planetSides().webWay(gear) != 0) {
            Stands.Stand web = plan.planetSides().web(gear);
            double y = plan.gearY(gear.id());
            double foot = new ShaftShape(plan, plan.layout().shaft(gear.carrier())).reach(web);
            double rim = y - (plan.radius(gear.id()) + plan.outer(gear)) / 2;
            List<Point> down = new ArrayList<>(
                    List.of(new Point(plan.x(gear.id()), rim), new Point(web.x(), rim), new Point(web.x(), y - foot)));
            if (goesOut) {
                Collections.reverse(down);
            }
            points.addAll(down);
        }
        return points;
    }

    /** Power that leaves an idler on the side where it came in does not reach its middle. */
    private double turningPoint(List<String> way, int at) {
        if (at == 0 || at == way.size() - 1 || !isGear(way.get(at - 1)) || !isGear(way.get(at + 1))) {
            return 0;
        }
        double y = plan.gearY(way.get(at));
        if (plan.planets().isPlanet(way.get(at))) {
            return 0;
        }
        double from = Math.signum(plan.gearY(way.get(at - 1)) - y);
        double to = Math.signum(plan.gearY(way.get(at + 1)) - y);
        return from == to ? from * plan.radius(way.get(at)) * 0.6 : 0;
    }

    /** Where clutching teeth and sleeve meet, from the axis. */
    private double inTeeth() {
        return plan.hubRadius() - 2;
    }

    /**
     * Up is -1, down 1: the side from which power comes to a coupled gear, or to which it goes from there; where it
     * stays on its line, the side away from the number of teeth.
     */
    private int side(List<String> way, int at) {
        for (int near : new int[] {at, at - 1, at + 1, at - 2, at + 2}) {
            if (near >= 0 && near < way.size() && isGear(way.get(near))) {
                for (int mate : new int[] {near - 1, near + 1}) {
                    if (mate >= 0 && mate < way.size() && isGear(way.get(mate))) {
                        return plan.gearY(way.get(mate)) > plan.gearY(way.get(near)) ? 1 : -1;
                    }
                }
                return -new GearFigures(plan).freeSide(plan.layout().gear(way.get(near)));
            }
        }
        return -1;
    }

    private boolean isGear(String id) {
        return plan.layout().find(Gear.class, id).isPresent();
    }

    private boolean isTeeth(List<String> way, int at) {
        return at >= 0
                && at < way.size()
                && plan.layout().find(ClutchingTeeth.class, way.get(at)).isPresent();
    }

    private boolean isShaft(List<String> way, int at) {
        return at >= 0
                && at < way.size()
                && plan.layout().find(Shaft.class, way.get(at)).isPresent();
    }
}
