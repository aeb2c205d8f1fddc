package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** How far things reach from the middle of their line, wherever forks may take them. */
final class Outlines {
    private static final double LEAST_SLEEVE = 27;
    private static final double GREATEST_SLEEVE = 44;
    /** The least of hub and sleeve round their shaft. */
    private static final double ROUND_SHAFT = 18;

    private static final double SHARE_OF_GEAR = 0.8;
    /** The differential's case, as seen from the side. */
    static final double DIFFERENTIAL_RADIUS = 44;
    /** What a ring with teeth inside has outside of them. */
    static final double RIM = 18;
    /** The length of a chain between its sprockets. */
    static final double CHAIN = 66;
    /** Between the teeth of a bevel pair that is drawn on two lines. */
    static final double CROSSING = 34;

    private static final double FAR = 10_000;

    private final Layout layout;
    private final Lines lines;
    private final Sizes sizes;
    private final Columns columns;
    private final Radii radii;
    private final double unitsPerMm;
    private final double sleeveRadius;
    private final Planets planets;
    private final Nesting nesting;
    private final Map<String, List<Box>> covered = new HashMap<>();

    Outlines(Layout layout, Lines lines, Sizes sizes, Columns columns, Radii radii, double unitsPerMm) {
        this.layout = layout;
        this.lines = lines;
        this.sizes = sizes;
        this.columns = columns;
        this.radii = radii;
        this.unitsPerMm = unitsPerMm;
        this.planets = new Planets(layout);
        this.nesting = new Nesting(layout, lines, sizes, columns);
        this.sleeveRadius = fittingSleeve();
    }

    /** Of the pitch circle. An axle across and its pinion have a size of their own. */
    double radius(String gear) {
        return lines.axlesAcross().stream()
                .filter(axle -> axle.joins(layout.gear(gear)))
                .findFirst()
                .map(axle -> axle.pinion().equals(gear) ? axle.pinionRadius(layout) : Axle.CROWN)
                .orElseGet(() -> radii.ofMm(gear) * unitsPerMm);
    }

    /** As far as the gear reaches from its axis. */
    double outer(Gear gear) {
        return radius(gear.id()) + (gear.form() == GearForm.INTERNAL ? RIM : 0);
    }

    double centreDistance(Mesh mesh) {
        double between = radii.centreDistanceMm(mesh) * unitsPerMm;
        return between + (mesh.kind() == MeshKind.CHAIN ? CHAIN : mesh.kind().isBevel() ? CROSSING : 0);
    }

    /** From a line to one beside it; down is positive. */
    double offset(String beside) {
        return layout.find(Shaft.class, beside)
                .filter(shaft -> shaft.carriedBy().isPresent())
                .map(spindle -> planets.way(spindle) * radii.spindleMm(spindle) * unitsPerMm)
                .orElse(0.0);
    }

    Nesting nesting() {
        return nesting;
    }

    /** All sleeves are of one size: a little smaller than the smallest gear that one of them couples. */
    double sleeveRadius() {
        return sleeveRadius;
    }

    private double fittingSleeve() {
        double smallest = layout.members().stream()
                .flatMap(member -> member.sides().values().stream())
                .filter(Engagement.Couples.class::isInstance)
                .flatMap(engagement -> layout.find(Gear.class, ((Engagement.Couples) engagement).to()).stream())
                .mapToDouble(gear -> radius(gear.id()))
                .min()
                .orElse(GREATEST_SLEEVE);
        double least = layout.all(Sleeve.class)
                .mapToDouble(sleeve -> nesting.radius(sleeve.shaft(), columns.of(sleeve.id())) + ROUND_SHAFT)
                .reduce(LEAST_SLEEVE, Math::max);
        return Math.max(least, Math.min(GREATEST_SLEEVE, SHARE_OF_GEAR * smallest));
    }

    /** The boxes that a line covers with those beside it, its middle at 0, half-shafts included, which reach far out. */
    List<Box> of(String line) {
        return covered.computeIfAbsent(line, this::withAllBeside);
    }

    private List<Box> withAllBeside(String line) {
        List<Box> boxes = new ArrayList<>(within(line));
        lines.differentials(line).stream()
                .filter(differential -> layout.find(
                                HalfShaft.class, differential.sides().get(0))
                        .isPresent())
                .forEach(differential ->
                        boxes.add(Box.about(columns.of(differential.id()), 0, FAR, Sizes.SHAFT_RADIUS)));
        Exits exits = new Exits(layout, lines, columns);
        lines.shafts(line).stream().filter(exits::leaves).forEach(shaft -> {
            // what carries nothing starts in the middle of the others on its line
            double x = shaft.along().isEmpty()
                    ? Box.of(within(line)).x()
                    : columns.of(shaft.along().get(0));
            boxes.add(
                    exits.end(shaft) == Side.FRONT
                            ? new Box(x - FAR, -Sizes.SHAFT_RADIUS, x, Sizes.SHAFT_RADIUS)
                            : new Box(x, -Sizes.SHAFT_RADIUS, x + FAR, Sizes.SHAFT_RADIUS));
        });
        lines.allBeside(line).forEach(beside -> within(beside).forEach(box -> boxes.add(box.moved(0, offset(beside)))));
        return boxes;
    }

    /** The boxes that a line by itself covers inside the case. */
    List<Box> within(String line) {
        if (lines.across(line).isPresent()) {
            Axle axle = lines.across(line).get();
            double x = columns.of(axle.differential());
            return List.of(
                    Box.about(columns.of(axle.pinion()), 0, Axle.PINION_HALF, axle.pinionRadius(layout)),
                    Box.about(x, 0, Axle.CROWN, Axle.CASE_HIGH + Axle.CROWN_THICK),
                    Box.about(x, 0, EndFigures.WHEEL_RADIUS, Axle.TO_WHEEL + EndFigures.WHEEL_HALF_WIDTH));
        }
        List<Box> boxes = new ArrayList<>();
        lines.gears(line).stream()
                .filter(gear -> !isAtAxle(gear.id()))
                .forEach(gear -> places(gear).forEach(place -> boxes.addAll(gear(gear, place))));
        layout.all(Sleeve.class)
                .filter(sleeve -> lines.ofCarrier(sleeve.shaft()).equals(line))
                .forEach(sleeve ->
                        boxes.add(Box.about(columns.of(sleeve.id()), 0, sizes.half(sleeve.id()), sleeveRadius())));
        layout.all(Clutch.class)
                .filter(clutch -> clutch.drivenBy().isPresent())
                .filter(clutch -> lines.ofCarrier(clutch.drives()).equals(line))
                .forEach(clutch ->
                        boxes.add(Box.about(columns.of(clutch.id()), 0, sizes.half(clutch.id()), InnerClutch.RADIUS)));
        lines.differentials(line).stream()
                .map(Differential::id)
                .forEach(id -> boxes.add(Box.about(columns.of(id), 0, sizes.half(id), DIFFERENTIAL_RADIUS)));
        if (!lines.held(line)) {
            lines.shafts(line).stream()
                    .filter(shaft -> !shaft.along().isEmpty())
                    .flatMap(shaft -> shaft.along().stream()
                            .filter(id -> !isAtAxle(id))
                            .map(id -> Box.about(columns.of(id), 0, sizes.half(id), Sizes.SHAFT_RADIUS))
                            .reduce(Box::with)
                            .stream())
                    .forEach(boxes::add);
        }
        return boxes.isEmpty() ? List.of(Box.about(0, 0, 1, Sizes.SHAFT_RADIUS)) : boxes;
    }

    /** Whether it lies in the housing of an axle across, not in the box. */
    private boolean isAtAxle(String id) {
        return lines.axlesAcross().stream().anyMatch(axle -> axle.pinion().equals(id));
    }

    private List<Box> gear(Gear gear, double place) {
        Box box = Box.about(place, 0, sizes.half(gear.id()), outer(gear));
        return layout.find(Shaft.class, gear.carrier())
                .filter(shaft -> shaft.carriedBy().isPresent() && planets.isDrawnTwice(shaft))
                .map(spindle -> List.of(box, box.moved(0, -2 * offset(lines.ofCarrier(spindle.id())))))
                .orElse(List.of(box));
    }

    /** Where a gear may stand: in neutral, and in every mesh that a fork takes it to. */
    Stream<Double> places(Gear gear) {
        double rest = columns.of(gear.id());
        String mover = gear.seat() == Seat.RIM ? gear.carrier() : gear.id();
        Stream<Double> moved = layout.members().stream()
                .filter(member -> member.part().equals(mover))
                .map(ShiftMember::sides)
                .map(Map::entrySet)
                .flatMap(sides -> sides.stream())
                .filter(side -> side.getValue() instanceof Engagement.Meshes)
                .map(side -> rest + Strokes.signed(side.getKey(), Strokes.INTO_MESH));
        return Stream.concat(Stream.of(rest), moved);
    }
}
