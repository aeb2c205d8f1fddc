package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Sleeve;

/** How far things reach from the middle of their line, wherever forks may take them. */
final class Outlines {
    private static final double LEAST_SLEEVE = 27;
    private static final double GREATEST_SLEEVE = 44;
    private static final double SHARE_OF_GEAR = 0.8;
    /** The differential's case, as seen from the side. */
    static final double DIFFERENTIAL_RADIUS = 44;

    private static final double FAR = 10_000;

    private final Layout layout;
    private final Lines lines;
    private final Sizes sizes;
    private final Columns columns;
    private final Radii radii;
    private final double unitsPerMm;
    private final double sleeveRadius;
    private final Map<String, List<Box>> covered = new HashMap<>();

    Outlines(Layout layout, Lines lines, Sizes sizes, Columns columns, Radii radii, double unitsPerMm) {
        this.layout = layout;
        this.lines = lines;
        this.sizes = sizes;
        this.columns = columns;
        this.radii = radii;
        this.unitsPerMm = unitsPerMm;
        this.sleeveRadius = fittingSleeve();
    }

    double radius(String gear) {
        return radii.ofMm(gear) * unitsPerMm;
    }

    double centreDistance(Mesh mesh) {
        return radii.centreDistanceMm(mesh) * unitsPerMm;
    }

    /** All sleeves are of one size: a little smaller than the smallest gear that one of them couples. */
    double sleeveRadius() {
        return sleeveRadius;
    }

    private double fittingSleeve() {
        double smallest = layout.members().stream()
                .flatMap(member -> member.sides().values().stream())
                .filter(Engagement.Couples.class::isInstance)
                .map(engagement -> ((Engagement.Couples) engagement).to())
                .filter(to -> layout.find(Gear.class, to).isPresent())
                .mapToDouble(this::radius)
                .min()
                .orElse(GREATEST_SLEEVE);
        return Math.max(LEAST_SLEEVE, Math.min(GREATEST_SLEEVE, SHARE_OF_GEAR * smallest));
    }

    /** The boxes that a line covers, its middle at 0, half-shafts included, which reach far out of the box. */
    List<Box> of(String line) {
        return covered.computeIfAbsent(line, this::withHalfShafts);
    }

    private List<Box> withHalfShafts(String line) {
        List<Box> boxes = new ArrayList<>(within(line));
        lines.differential(line)
                .ifPresent(differential ->
                        boxes.add(Box.about(columns.of(differential.id()), 0, FAR, Sizes.SHAFT_RADIUS)));
        return boxes;
    }

    /** The boxes that a line covers inside the case. */
    List<Box> within(String line) {
        List<Box> boxes = new ArrayList<>();
        lines.gears(line)
                .forEach(gear -> places(gear)
                        .forEach(place -> boxes.add(Box.about(place, 0, sizes.half(gear.id()), radius(gear.id())))));
        layout.all(Sleeve.class)
                .filter(sleeve -> lines.ofCarrier(sleeve.shaft()).equals(line))
                .forEach(sleeve ->
                        boxes.add(Box.about(columns.of(sleeve.id()), 0, sizes.half(sleeve.id()), sleeveRadius())));
        lines.differential(line).ifPresent(differential -> {
            double half = sizes.half(differential.id());
            boxes.add(Box.about(columns.of(differential.id()), 0, half, DIFFERENTIAL_RADIUS));
        });
        if (!lines.held(line)) {
            lines.shafts(line).stream()
                    .filter(shaft -> !shaft.along().isEmpty())
                    .map(shaft -> Box.of(shaft.along().stream()
                            .map(id -> Box.about(columns.of(id), 0, sizes.half(id), Sizes.SHAFT_RADIUS))
                            .toList()))
                    .forEach(boxes::add);
        }
        return boxes.isEmpty() ? List.of(Box.about(0, 0, 1, Sizes.SHAFT_RADIUS)) : boxes;
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
