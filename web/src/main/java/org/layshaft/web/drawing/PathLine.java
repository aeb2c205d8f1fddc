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
            if (at > 0 && at < way.size() - 1) {
                return roundBells(shaft, way.get(at - 1), way.get(at + 1));
            }
            if (at == 0) {
                ends.add(new Point(bar.left(), bar.y()));
            }
            if (at == way.size() - 1) {
                boolean front = plan.exits().leaves(shaft) && plan.exits().end(shaft) == Side.FRONT;
                ends.add(new Point(front ? bar.left() : bar.right(), bar.y()));
            }
            return ends;
        }
        if (part instanceof Sleeve sleeve) {
            double y = plan.carrierY(sleeve.shaft());
            return List.of(new Point(plan.restX(sleeve.id()), y + side(way, at) * inTeeth()));
        }
        if (part instanceof DogRing dogs) {
            return List.of(new Point(plan.x(dogs.id()), plan.y(dogs.id()) - inTeeth()));
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

    /** Over the drums that lie between what power comes from and what it goes to. */
    private List<Point> roundBells(Shaft shaft, String from, String to) {
        List<Stands.Stand> stands = plan.nesting().stands(shaft.id()).all();
        Optional<Stands.Stand> one = standOf(stands, from);
        Optional<Stands.Stand> other = standOf(stands, to);
        if (one.isEmpty() || other.isEmpty()) {
            return List.of();
        }
        double left = Math.min(one.get().x(), other.get().x());
        double right = Math.max(one.get().x(), other.get().x());
        double y = plan.carrierY(shaft.id());
        List<Point> points = new ArrayList<>();
        new ShaftShape(plan, shaft)
                .bells().stream()
                .filter(bell -> bell.left() + bell.right() > 2 * left && bell.left() + bell.right() < 2 * right)
                .forEach(bell -> {
                    points.add(new Point(bell.left() + Bell.WALL / 2, y - bell.radius() - Bell.WALL / 2));
                    points.add(new Point(bell.right() - Bell.WALL / 2, y - bell.radius() - Bell.WALL / 2));
                });
        if (one.get().x() > other.get().x()) {
            Collections.reverse(points);
        }
        return points;
    }

    /** What stands on a shaft, by the part that it is or that sits on it: a hub stands where its sleeve does. */
    private Optional<Stands.Stand> standOf(List<Stands.Stand> stands, String part) {
        String id = plan.layout().find(Hub.class, part).map(Hub::sleeve).orElse(part);
        return stands.stream().filter(stand -> stand.id().equals(id)).findFirst();
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
            List<Point> down = new ArrayList<>(List.of(
                    new Point(plan.x(gear.id()), rim), new Point(web.x(), rim), new Point(web.x(), y - foot)));
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
