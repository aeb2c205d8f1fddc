package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Detent;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/**
 * Every part as a figure, in the order of painting, which is also the order in which the keyboard reaches them: rails
 * from the top down, each with its forks and detent; then line by line, shaft before what sits on it, front to rear.
 */
final class Figures {
    private final Plan plan;
    private final Surroundings around;
    private final Map<String, Figure> figures = new LinkedHashMap<>();

    Figures(Plan plan, Surroundings around) {
        this.plan = plan;
        this.around = around;
        selector();
        plan.linesFromTop().forEach(this::line);
    }

    List<Figure> all() {
        return List.copyOf(figures.values());
    }

    Box box(String part) {
        return figures.get(part).box();
    }

    private void selector() {
        Layout layout = plan.layout();
        SelectorFigures selector = new SelectorFigures(plan, around);
        around.rails().forEach(rail -> {
            layout.all(Fork.class).filter(fork -> fork.rail().equals(rail)).forEach(fork -> add(selector.fork(fork)));
            add(selector.rail(layout.the(Rail.class, rail)));
            layout.all(Detent.class)
                    .filter(detent -> detent.rail().equals(rail))
                    .forEach(detent -> add(selector.detent(detent)));
        });
        new InterlockFigures(plan, around).all().forEach(this::add);
    }

    private void line(String line) {
        Layout layout = plan.layout();
        EndFigures ends = new EndFigures(plan, around);
        ShaftFigures shafts = new ShaftFigures(plan, around);
        List<Shaft> onLine = plan.lines().shafts(line);
        onLine.stream().filter(shaft -> !isInside(shaft)).forEach(shaft -> add(shafts.of(shaft)));
        layout.all(Clutch.class)
                .filter(clutch -> clutch.drivenBy().isEmpty())
                .filter(clutch -> plan.lines().ofCarrier(clutch.drives()).equals(line))
                .forEach(clutch -> add(ends.clutch(clutch)));
        plan.lines().differentials(line).forEach(differential -> {
            layout.all(HalfShaft.class)
                    .filter(half -> half.differential().equals(differential.id()))
                    .forEach(half -> add(ends.halfShaft(half)));
            add(ends.differential(differential));
        });
        List<Figure> items = items(line);
        // A shaft that runs inside another is painted after the gear that holds its end.
        List<Figure> inside =
                onLine.stream().filter(this::isInside).map(shafts::of).toList();
        List<Figure> holders = items.stream()
                .filter(figure -> inside.stream().anyMatch(shaft -> holds(figure, shaft)))
                .toList();
        holders.forEach(this::add);
        inside.forEach(this::add);
        items.forEach(this::add);
    }

    private boolean isInside(Shaft shaft) {
        return Lines.between(plan.layout()).stream()
                .anyMatch(bearing -> bearing.inner().equals(shaft.id()));
    }

    private boolean holds(Figure figure, Figure inside) {
        return figure.part() instanceof Gear gear
                && Lines.between(plan.layout()).stream()
                        .anyMatch(
                                bearing -> bearing.inner().equals(inside.part().id())
                                        && bearing.outer().equals(gear.carrier()));
    }

    /** What sits on a line, front to rear; of things in one place the inner first. */
    private List<Figure> items(String line) {
        Layout layout = plan.layout();
        GearFigures gears = new GearFigures(plan);
        SleeveFigures sleeves = new SleeveFigures(plan);
        BearingFigures bearings = new BearingFigures(plan);
        EndFigures ends = new EndFigures(plan, around);
        List<Figure> items = new ArrayList<>();
        plan.lines().gears(line).forEach(gear -> items.add(gears.of(gear)));
        layout.all(Bearing.class)
                .filter(bearing -> plan.lines().ofCarrier(bearing.inner()).equals(line))
                .forEach(bearing -> items.add(bearings.of(bearing)));
        layout.all(Joint.class)
                .filter(joint -> plan.lines().ofItem(joint.id()).equals(line))
                .forEach(joint -> items.add(ends.joint(joint)));
        plan.lines().dogRings(line).forEach(dogs -> items.add(sleeves.dogRing(dogs)));
        layout.all(Clutch.class)
                .filter(clutch -> clutch.drivenBy().isPresent())
                .filter(clutch -> plan.lines().ofCarrier(clutch.drives()).equals(line))
                .forEach(clutch -> items.add(new InnerClutch(plan).of(clutch)));
        layout.all(ClutchingTeeth.class)
                .filter(teeth -> plan.lines().ofItem(teeth.gear()).equals(line))
                .forEach(teeth -> items.add(sleeves.clutchingTeeth(teeth)));
        Stream<Sleeve> onLine = layout.all(Sleeve.class)
                .filter(sleeve -> plan.lines().ofCarrier(sleeve.shaft()).equals(line));
        onLine.forEach(sleeve -> {
            layout.all(BlockingRing.class)
                    .filter(ring -> ring.sleeve().equals(sleeve.id()))
                    .forEach(ring -> items.add(sleeves.ring(ring)));
            items.add(sleeves.hub(layout.the(Hub.class, sleeve.hub())));
            items.add(sleeves.sleeve(sleeve));
        });
        // A sleeve covers what it has slid over, so it comes after it wherever it stands.
        items.sort(Comparator.comparingDouble(this::place));
        List<Figure> moved = items.stream().filter(figure -> isMoved(figure)).toList();
        items.removeAll(moved);
        items.addAll(moved);
        return items;
    }

    private boolean isMoved(Figure figure) {
        return figure.part() instanceof Sleeve sleeve
                && plan.stance().of(sleeve.id()).isPresent();
    }

    private double place(Figure figure) {
        return figure.box().x();
    }

    private void add(Figure figure) {
        figures.putIfAbsent(figure.part().id(), figure);
    }
}
