package org.layshaft.web.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;

/** Where everything lies, before anything is painted. The front is left. */
final class Plan {
    private static final double USUAL_DISTANCE = 150;
    private static final double GREATEST_EXTENT = 540;
    /** A ring is drawn of such a size as a pair of gears this many of its radii apart would be. */
    private static final double RING_TO_DISTANCE = 1.2;
    /** Gears in mesh share at least so much of their width. */
    private static final double LEAST_SHARED = 4;

    private final Layout layout;
    private final Stance stance;
    private final Lines lines;
    private final Planets planets;
    private final Sizes sizes;
    private final Strokes strokes;
    private final Columns columns;
    private final Outlines outlines;
    private final Heights heights;

    Plan(Layout layout, Stance stance) {
        this.layout = layout;
        this.stance = stance;
        this.lines = new Lines(layout);
        this.planets = new Planets(layout);
        this.sizes = new Sizes(layout);
        this.strokes = new Strokes(layout);
        this.columns = new Columns(layout, lines, sizes);
        Radii radii = new Radii(layout, lines);
        double usual = USUAL_DISTANCE / mainDistanceMm(radii);
        Heights tried = new Heights(layout, lines, outlines(radii, usual));
        double unitsPerMm = usual * Math.min(1, GREATEST_EXTENT / tried.extent());
        this.outlines = outlines(radii, unitsPerMm);
        this.heights = new Heights(layout, lines, outlines);
    }

    private Outlines outlines(Radii radii, double unitsPerMm) {
        return new Outlines(layout, lines, sizes, columns, radii, unitsPerMm);
    }

    /** The greatest centre distance between shafts that turn, without that of a final drive. */
    private double mainDistanceMm(Radii radii) {
        OptionalDouble between = layout.everyMesh()
                .filter(mesh -> Stream.of(mesh.first(), mesh.second())
                        .map(gear -> lines.of(layout.gear(gear)))
                        .noneMatch(line -> lines.held(line) || lines.isAxle(line)))
                .filter(mesh -> mesh.kind() == MeshKind.EXTERNAL)
                .mapToDouble(radii::centreDistanceMm)
                .max();
        double rings = layout.all(Gear.class)
                .filter(gear -> gear.form() == GearForm.INTERNAL)
                .mapToDouble(gear -> RING_TO_DISTANCE * radii.ofMm(gear.id()))
                .max()
                .orElse(0);
        return between.isPresent() || rings > 0
                ? Math.max(between.orElse(0), rings)
                : layout.all(Gear.class)
                        .mapToDouble(gear -> 2 * radii.ofMm(gear.id()))
                        .max()
                        .orElse(USUAL_DISTANCE);
    }

    Layout layout() {
        return layout;
    }

    Stance stance() {
        return stance;
    }

    Lines lines() {
        return lines;
    }

    Strokes strokes() {
        return strokes;
    }

    double half(String id) {
        return sizes.half(id);
    }

    double radius(String gear) {
        return outlines.radius(gear);
    }

    /** As far as the gear reaches from its axis. */
    double outer(Gear gear) {
        return outlines.outer(gear);
    }

    Exits exits() {
        return new Exits(layout, lines, columns);
    }

    double sleeveRadius() {
        return outlines.sleeveRadius();
    }

    /** Inside of the sleeves, outside of the hubs. */
    double hubRadius() {
        return sleeveRadius() - 13;
    }

    /** The middle of an item where it stands now. */
    double x(String id) {
        return columns.of(id) + strokes.displacement(mover(id), stance);
    }

    /** The middle of an item in neutral. */
    double restX(String id) {
        return columns.of(id);
    }

    private String mover(String id) {
        return layout.find(Gear.class, id)
                .filter(gear -> gear.seat() == Seat.RIM)
                .map(Gear::carrier)
                .orElse(id);
    }

    double lineY(String line) {
        return heights.of(line);
    }

    /** The height of a shaft's or differential's middle. */
    double carrierY(String carrier) {
        return lineY(lines.ofCarrier(carrier));
    }

    double gearY(String gear) {
        return y(gear);
    }

    /** The height of the middle of anything that sits on a line. */
    double y(String item) {
        return lineY(lines.ofItem(item));
    }

    Box gearBox(String gear) {
        return Box.about(x(gear), gearY(gear), half(gear), outlines.outer(layout.gear(gear)));
    }

    /** The planet on the other side of its axis, where it is drawn twice. */
    Optional<Box> twin(String gear) {
        return twinDistance(layout.gear(gear).carrier())
                .map(down -> gearBox(gear).moved(0, down));
    }

    /** From what is on a spindle of planets down to where it is drawn again on the other side of the axis. */
    Optional<Double> twinDistance(String carrier) {
        return layout.find(Shaft.class, carrier)
                .filter(shaft -> shaft.carriedBy().isPresent() && planets.isDrawnTwice(shaft))
                .map(spindle -> -2 * outlines.offset(lines.ofCarrier(spindle.id())));
    }

    Planets planets() {
        return planets;
    }

    PlanetSides planetSides() {
        return new PlanetSides(layout, columns, sizes);
    }

    Nesting nesting() {
        return outlines.nesting();
    }

    /** Of the outside of a shaft where something sits on it; 0 about the axis of a differential. */
    double shaftRadius(String carrier, double x) {
        return layout.find(Shaft.class, carrier)
                .map(shaft -> nesting().radius(carrier, x))
                .orElse(Sizes.SHAFT_RADIUS);
    }

    /** Whether another shaft runs through this one there. */
    boolean isHollow(String carrier, double x) {
        return layout.find(Shaft.class, carrier).isPresent() && nesting().bore(carrier, x) > 0;
    }

    /** Whether the two stand in one column now and touch, so that the drawing itself shows that they mesh. */
    boolean touch(Mesh mesh) {
        if (mesh.kind().isBevel()) {
            return lines.axlesAcross().stream().anyMatch(axle -> mesh.joins(axle.crown()));
        }
        double shared = half(mesh.first()) + half(mesh.second()) - Math.abs(x(mesh.first()) - x(mesh.second()));
        double apart = Math.abs(gearY(mesh.first()) - gearY(mesh.second()));
        return mesh.kind() != MeshKind.CHAIN
                && shared > LEAST_SHARED
                && Math.abs(apart - outlines.centreDistance(mesh)) < 0.5;
    }

    /** The mesh of these two, in whatever order. */
    Mesh mesh(String one, String other) {
        return layout.everyMesh()
                .filter(mesh -> mesh.joins(one) && mesh.joins(other))
                .findFirst()
                .orElseThrow();
    }

    /** Where the pitch circles of two gears touch that are drawn touching. */
    Point contact(Mesh mesh) {
        boolean inside = layout.gear(mesh.first()).form() == GearForm.INTERNAL;
        String gear = inside ? mesh.second() : mesh.first();
        double way = Math.signum(gearY(mesh.other(gear)) - gearY(gear));
        double toward = mesh.kind() == MeshKind.INTERNAL ? -way : way;
        double x =
                (Math.max(gearBox(mesh.first()).left(), gearBox(mesh.second()).left())
                                + Math.min(
                                        gearBox(mesh.first()).right(),
                                        gearBox(mesh.second()).right()))
                        / 2;
        return new Point(x, gearY(gear) + toward * radius(gear));
    }

    /** The meshes that are made now. */
    List<Mesh> made() {
        Stream<Mesh> slid = stance.engaged().entrySet().stream()
                .flatMap(entry -> Sizes.slidMeshes(layout, entry.getKey(), entry.getValue()));
        return Stream.concat(layout.meshes().stream(), slid).distinct().toList();
    }

    /** Lines from the top of the drawing to its foot. */
    List<String> linesFromTop() {
        return lines.all().stream()
                .sorted(Comparator.comparingDouble(this::lineY))
                .toList();
    }

    /** Everything between the walls and around the gears, without axles across. */
    Box gearing() {
        return Box.of(covered(line -> lines.across(line).isEmpty()));
    }

    /** What axles across cover, with their wheels. */
    List<Box> axles() {
        return covered(line -> lines.across(line).isPresent());
    }

    /** What lines of the box cover, wherever forks may take it. */
    List<Box> covered(Predicate<String> wanted) {
        return lines.all().stream()
                .filter(wanted)
                .flatMap(line -> outlines.within(line).stream().map(box -> box.moved(0, lineY(line))))
                .toList();
    }

    /** From the first item of a shaft to its last, wherever forks may take them. */
    Optional<Box> span(Shaft shaft) {
        return shaft.along().stream()
                .flatMap(id -> layout.find(Gear.class, id)
                        .map(outlines::places)
                        .orElseGet(() -> Stream.of(restX(id)))
                        .map(x -> Box.about(x, carrierY(shaft.id()), half(id), Sizes.SHAFT_RADIUS)))
                .reduce(Box::with);
    }
}
