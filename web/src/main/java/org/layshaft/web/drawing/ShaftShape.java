package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/** What a shaft is made of: bars, hollow where others run through, drums round what stands inside, arms to planets. */
final class ShaftShape {
    private static final double ROUND = 6;
    private static final double BEHIND_SLEEVE = 10;
    private static final double DRUM_WEB = 6;

    private final Plan plan;
    private final Shaft shaft;
    private final List<Stands.Stand> stands;
    private final List<double[]> bars = new ArrayList<>();
    private final List<Bell> bells = new ArrayList<>();

    ShaftShape(Plan plan, Shaft shaft) {
        this.plan = plan;
        this.shaft = shaft;
        this.stands = plan.nesting().stands(shaft.id()).all();
        for (int at = 0; at < stands.size(); at++) {
            Stands.Stand stand = stands.get(at);
            boolean last = at == stands.size() - 1;
            if (at == 0 && isDrum(stand)) {
                bars.add(new double[] {stand.left() - DRUM_WEB - 1, stand.left() - DRUM_WEB});
            }
            if (!last && isDrum(stand)) {
                continue;
            }
            boolean free = !last && goesRound(stand, stands.get(at + 1));
            if (!last && !free) {
                Stands.Stand next = stands.get(at + 1);
                bars.add(new double[] {stand.left(), isDrum(next) ? next.left() : next.right()});
            } else if (isSolid(stand)) {
                bars.add(new double[] {stand.left(), stand.right()});
            }
        }
        bars.sort(Comparator.comparingDouble(bar -> bar[0]));
    }

    List<Bell> bells() {
        return bells;
    }

    /** Whether it is one solid bar and nothing else. */
    boolean isPlain() {
        boolean solid =
                stands.stream().allMatch(stand -> plan.nesting().bore(shaft.id(), stand.x()) == 0 && isSolid(stand));
        return bells.isEmpty() && solid;
    }

    /** Whether these dogs are held from outside, by a drum, and not by a bar of the shaft. */
    boolean hangs(String dogs) {
        return stands.stream()
                .filter(stand -> stand.id().equals(dogs))
                .anyMatch(stand -> bars.stream().noneMatch(bar -> bar[0] - 1 < stand.x() && stand.x() < bar[1] + 1));
    }

    /** To where something that is tied there has to come down. */
    double reach(Stands.Stand stand) {
        double x = stand.x();
        boolean onBar = bars.stream().anyMatch(bar -> bar[0] - 1 < x && x < bar[1] + 1);
        return onBar || bells.isEmpty()
                ? plan.shaftRadius(shaft.id(), x)
                : bells.stream()
                        .filter(bell -> bell.left() < stand.right() + 1 && stand.left() - 1 < bell.right())
                        .mapToDouble(Bell::radius)
                        .findFirst()
                        .orElse(plan.shaftRadius(shaft.id(), x));
    }

    /** Bars with the ends that they go on to, the middle of the shaft at 0. */
    List<Box> boxes(double left, double right) {
        List<Box> boxes = new ArrayList<>();
        List<double[]> joined = joined(left, right);
        joined.forEach(bar -> boxes.addAll(hollowed(bar[0], bar[1])));
        bells.forEach(bell -> boxes.addAll(walls(bell)));
        plan.planets().spindles().stream()
                .filter(spindle ->
                        spindle.carriedBy().filter(shaft.id()::equals).isPresent())
                .forEach(spindle -> boxes.addAll(arms(spindle)));
        drum().forEach(boxes::add);
        return boxes;
    }

    private List<double[]> joined(double left, double right) {
        List<double[]> joined = new ArrayList<>();
        for (double[] bar : bars) {
            double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && bar[0] <= last[1] + 1) {
                last[1] = Math.max(last[1], bar[1]);
            } else {
                joined.add(bar.clone());
            }
        }
        if (!joined.isEmpty()) {
            joined.get(0)[0] = Math.min(left, joined.get(0)[0]);
            double[] last = joined.get(joined.size() - 1);
            last[1] = isDrum(stands.get(stands.size() - 1)) ? last[1] : Math.max(right, last[1]);
        }
        return joined;
    }

    private List<Box> hollowed(double left, double right) {
        double[] cuts = Stream.concat(
                        Stream.of(left, right),
                        plan.nesting().within(shaft.id()).stream()
                                .map(plan.nesting()::stands)
                                .flatMap(inner -> Stream.of(inner.left(), inner.right())))
                .mapToDouble(Double::doubleValue)
                .filter(x -> x >= left && x <= right)
                .sorted()
                .distinct()
                .toArray();
        List<Box> boxes = new ArrayList<>();
        for (int at = 1; at < cuts.length; at++) {
            double middle = (cuts[at - 1] + cuts[at]) / 2;
            double outer = plan.shaftRadius(shaft.id(), middle);
            double bore = plan.nesting().bore(shaft.id(), middle);
            if (bore == 0) {
                boxes.add(new Box(cuts[at - 1], -outer, cuts[at], outer));
            } else {
                boxes.addAll(both(cuts[at - 1], cuts[at], bore, outer));
            }
        }
        return boxes;
    }

    /** A bell where something inside is in the way of a bar; whether there is one. */
    private boolean goesRound(Stands.Stand from, Stands.Stand to) {
        double radius = inTheWay(from.right(), to.left()).max().orElse(0);
        if (radius <= plan.shaftRadius(shaft.id(), (from.right() + to.left()) / 2) + 1) {
            return false;
        }
        boolean overFrom = slidesOver(from);
        boolean overTo = slidesOver(to);
        double round = overFrom || overTo ? Math.max(radius, plan.sleeveRadius()) : radius;
        double left = overFrom ? from.left() - BEHIND_SLEEVE : from.right() - Bell.WALL;
        double right = overTo ? to.right() + BEHIND_SLEEVE : to.left() + Bell.WALL;
        if (overFrom) {
            bars.add(new double[] {left, from.right()});
        }
        if (overTo) {
            bars.add(new double[] {to.left(), right});
        }
        bells.add(new Bell(left, right, round + ROUND, foot(from, overFrom, left), foot(to, overTo, right)));
        return true;
    }

    private double foot(Stands.Stand stand, boolean over, double x) {
        boolean hung = plan.layout().find(DogRing.class, stand.id()).isPresent();
        boolean web = isWebOrArm(stand);
        return over || !hung && !web ? plan.shaftRadius(shaft.id(), x) : hung ? plan.hubRadius() : Double.MAX_VALUE;
    }

    /** How far things reach that stand inside this shaft between two places. */
    private DoubleStream inTheWay(double left, double right) {
        Layout layout = plan.layout();
        return plan.nesting()
                .inside(shaft.id(), left, right)
                .mapToDouble(stand -> layout.find(Gear.class, stand.id())
                        .map(gear -> plan.outer(gear))
                        .or(() -> layout.find(Sleeve.class, stand.id()).map(sleeve -> plan.sleeveRadius()))
                        .or(() -> layout.find(DogRing.class, stand.id()).map(dogs -> plan.hubRadius() + 2))
                        .or(() -> layout.find(Clutch.class, stand.id()).map(clutch -> InnerClutch.RADIUS))
                        .orElse(0.0));
    }

    /** Whether it is a sleeve that slides over something inside this shaft. */
    private boolean slidesOver(Stands.Stand stand) {
        return plan.layout().members().stream()
                .filter(member -> member.part().equals(stand.id()))
                .flatMap(member -> member.sides().values().stream())
                .anyMatch(side -> side instanceof Engagement.Couples couples
                        && plan.nesting().within(shaft.id()).contains(Coaxial.carrier(plan.layout(), couples.to())));
    }

    private boolean isWebOrArm(Stands.Stand stand) {
        return plan.layout().find(Shaft.class, stand.id()).isPresent()
                || plan.layout()
                        .find(Gear.class, stand.id())
                        .filter(plan.planets()::isRing)
                        .isPresent();
    }

    /** Whether the shaft itself has to be there for it. */
    private boolean isSolid(Stands.Stand stand) {
        boolean hung = plan.layout().find(DogRing.class, stand.id()).isPresent() && !bells.isEmpty();
        return !isWebOrArm(stand) && !hung && !isDrum(stand);
    }

    private boolean isDrum(Stands.Stand stand) {
        return plan.layout()
                .find(Clutch.class, stand.id())
                .filter(this::isDrivenFromHere)
                .isPresent();
    }

    private boolean isDrivenFromHere(Clutch clutch) {
        return clutch.drivenBy().filter(shaft.id()::equals).isPresent();
    }

    private List<Box> walls(Bell bell) {
        List<Box> boxes = new ArrayList<>(both(bell.left(), bell.right(), bell.radius(), bell.radius() + Bell.WALL));
        if (bell.fromRadius() < bell.radius()) {
            boxes.addAll(both(bell.left(), bell.left() + Bell.WALL, bell.fromRadius(), bell.radius()));
        }
        if (bell.toRadius() < bell.radius()) {
            boxes.addAll(both(bell.right() - Bell.WALL, bell.right(), bell.toRadius(), bell.radius()));
        }
        return boxes;
    }

    private List<Box> arms(Shaft spindle) {
        Stands.Stand arm = plan.planetSides().arm(spindle);
        double out = Math.abs(plan.lineY(plan.lines().ofCarrier(spindle.id())) - plan.carrierY(shaft.id()))
                + Sizes.SPINDLE_RADIUS
                + 3;
        List<Box> both = both(arm.left(), arm.right(), Math.min(reach(arm), out - 4), out);
        return plan.planets().isDrawnTwice(spindle)
                ? both
                : List.of(both.get(plan.planets().way(spindle) < 0 ? 0 : 1));
    }

    /** The drum of the clutches that this shaft drives. */
    private List<Box> drum() {
        double[] middles = plan.layout()
                .all(Clutch.class)
                .filter(this::isDrivenFromHere)
                .mapToDouble(clutch -> plan.x(clutch.id()))
                .sorted()
                .toArray();
        if (middles.length == 0) {
            return List.of();
        }
        double left = middles[0] - InnerClutch.HALF - DRUM_WEB;
        double right = middles[middles.length - 1] + InnerClutch.HALF;
        List<Box> boxes = new ArrayList<>(both(left, right, InnerClutch.RADIUS - Bell.WALL, InnerClutch.RADIUS));
        boxes.addAll(both(left, left + DRUM_WEB, 0, InnerClutch.RADIUS - Bell.WALL));
        return boxes;
    }

    private static List<Box> both(double left, double right, double inner, double outer) {
        return List.of(new Box(left, -outer, right, -inner), new Box(left, inner, right, outer));
    }
}
