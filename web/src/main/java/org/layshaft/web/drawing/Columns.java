package org.layshaft.web.drawing;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/** Where things stand along the box: in their order on each shaft, with gears in mesh in one column. */
final class Columns {
    private final Layout layout;
    private final Lines lines;
    private final Sizes sizes;
    private final Planets planets;
    private final Spacing spacing = new Spacing();
    private final Set<Mesh> slanted = new LinkedHashSet<>();
    private final Map<String, Double> places;

    Columns(Layout layout, Lines lines, Sizes sizes) {
        this.layout = layout;
        this.lines = lines;
        this.sizes = sizes;
        this.planets = new Planets(layout);
        layout.all(Shaft.class).flatMap(shaft -> shaft.along().stream()).forEach(spacing::place);
        layout.all(Differential.class).forEach(this::placeDifferential);
        layout.all(Joint.class).map(Joint::id).forEach(spacing::place);
        layout.all(Shaft.class).forEach(this::keepOrder);
        keepUnitsApart(UnitsInLine.of(layout));
        Lines.between(layout).forEach(this::keepOrderAcross);
        layout.members().forEach(this::keepCouplings);
        Ends ends = new Ends(layout, sizes, spacing);
        ends.keep(lines);
        layout.meshes().stream()
                .filter(mesh -> lines.axlesAcross().stream().noneMatch(axle -> mesh.joins(axle.crown())))
                .forEach(mesh -> align(mesh, 0));
        layout.members().forEach(this::alignSlid);
        Clearing clearing = new Clearing(layout, lines, sizes, spacing);
        clearing.bearingsOutside();
        Walls walls = new Walls(layout, lines);
        alignAll(walls.front());
        alignAll(walls.rear());
        walls.single().forEach(bearing -> alignNearest(bearing, walls));
        ends.closeUp();
        clearing.clear();
        this.places = spacing.places();
    }

    /** The middle of an item with everything in neutral. */
    double of(String id) {
        return places.get(carrierOf(id));
    }

    /** Meshes whose gears could not be put in one column. */
    Set<Mesh> slanted() {
        return slanted;
    }

    private void placeDifferential(Differential differential) {
        spacing.place(differential.id());
        differential.ringGear().ifPresent(ring -> {
            spacing.place(ring);
            boolean across =
                    lines.axlesAcross().stream().anyMatch(axle -> axle.crown().equals(ring));
            double aside = across ? 0 : sizes.half(ring) + sizes.half(differential.id());
            spacing.exactly(ring, differential.id(), aside);
        });
    }

    /** Between each unit and the next stands a place that nothing of either passes. */
    private void keepUnitsApart(List<Set<String>> units) {
        for (int next = 1; next < units.size(); next++) {
            String between = "between units " + next;
            spacing.place(between);
            units.get(next - 1).forEach(id -> spacing.atLeast(id, between, sizes.half(id) + Sizes.BETWEEN_UNITS));
            units.get(next).forEach(id -> spacing.atLeast(between, id, sizes.half(id) + Sizes.BETWEEN_UNITS));
        }
    }

    private List<String> ordered(Shaft shaft) {
        return shaft.along().stream().filter(id -> !isBetweenShafts(id)).toList();
    }

    private boolean isBetweenShafts(String id) {
        return Lines.between(layout).stream().anyMatch(bearing -> bearing.id().equals(id));
    }

    private void keepOrder(Shaft shaft) {
        List<String> along = ordered(shaft);
        for (int at = 1; at < along.size(); at++) {
            String before = along.get(at - 1);
            String behind = along.get(at);
            double slide = slide(before, Side.REAR) + slide(behind, Side.FRONT);
            double room = isInSet(before) || isInSet(behind) ? Sizes.BESIDE_PLANETS : 0;
            double gap = couples(before, Side.REAR, behind) || couples(behind, Side.FRONT, before)
                    ? Sizes.COUPLING_GAP
                    : Sizes.GAP + slide + room;
            spacing.atLeast(before, behind, sizes.half(before) + gap + sizes.half(behind));
        }
    }

    /** The outer shaft's items stand between what the inner shaft has before its first bearing there, and after its last. */
    private void keepOrderAcross(Bearing bearing) {
        Shaft inner = layout.shaft(bearing.inner());
        Shaft outer = layout.shaft(bearing.outer());
        List<String> within = Lines.between(layout).stream()
                .filter(other ->
                        other.inner().equals(inner.id()) && other.outer().equals(outer.id()))
                .map(Bearing::id)
                .toList();
        List<String> along = inner.along();
        int first = along.stream()
                .filter(within::contains)
                .findFirst()
                .map(along::indexOf)
                .orElse(0);
        int last = within.stream().mapToInt(along::indexOf).max().orElse(0);
        List<String> outers = ordered(outer);
        along.subList(0, Math.max(first, 0)).stream()
                .filter(id -> !isBetweenShafts(id))
                .forEach(id -> outers.forEach(other -> keepClear(id, other)));
        along.subList(last + 1, along.size()).stream()
                .filter(id -> !isBetweenShafts(id))
                .forEach(id -> outers.forEach(other -> keepClear(other, id)));
        boolean atRearOfOuter = along.indexOf(bearing.id()) >= last && last < along.size() - 1;
        if (!outers.isEmpty()) {
            String end = outers.get(atRearOfOuter ? outers.size() - 1 : 0);
            double inset = sizes.half(end) - sizes.half(bearing.id()) - 1;
            spacing.exactly(end, bearing.id(), atRearOfOuter ? inset : -inset);
        }
    }

    private void keepClear(String before, String behind) {
        spacing.atLeast(before, behind, sizes.half(before) + Sizes.GAP + sizes.half(behind));
    }

    private void keepCouplings(ShiftMember member) {
        member.sides().forEach((side, engagement) -> {
            if (engagement instanceof Engagement.Couples couples) {
                double distance = sizes.half(member.part()) + Sizes.COUPLING_GAP + sizes.half(couples.to());
                if (side == Side.FRONT) {
                    spacing.atLeast(couples.to(), member.part(), distance);
                } else {
                    spacing.atLeast(member.part(), couples.to(), distance);
                }
            }
        });
    }

    private void alignSlid(ShiftMember member) {
        member.sides().forEach((side, engagement) -> {
            if (engagement instanceof Engagement.Meshes slid) {
                slid.meshes().forEach(mesh -> {
                    boolean movesFirst = carrierOf(mesh.first()).equals(member.part());
                    double travel = Strokes.signed(side, Strokes.INTO_MESH);
                    align(mesh, movesFirst ? travel : -travel);
                });
            }
        });
    }

    private void align(Mesh mesh, double secondBehindFirst) {
        if (!spacing.exactly(carrierOf(mesh.first()), carrierOf(mesh.second()), secondBehindFirst)) {
            slanted.add(mesh);
        }
    }

    /** Refused where a gear stands in the way; then that bearing stands on its own. */
    private void alignAll(List<String> bearings) {
        bearings.stream().skip(1).forEach(bearing -> spacing.exactly(bearings.get(0), bearing, 0));
    }

    /** A bearing alone on its line sits in the wall that is nearer. */
    private void alignNearest(String bearing, Walls walls) {
        Map<String, Double> now = spacing.places();
        Stream.of(walls.front(), walls.rear())
                .flatMap(wall -> wall.stream().limit(1))
                .sorted(Comparator.comparingDouble(other -> Math.abs(now.get(other) - now.get(bearing))))
                .anyMatch(other -> spacing.exactly(other, bearing, 0));
    }

    private boolean couples(String member, Side side, String gear) {
        return engagement(member, side)
                .filter(Engagement.Couples.class::isInstance)
                .map(Engagement.Couples.class::cast)
                .filter(couples -> couples.to().equals(gear))
                .isPresent();
    }

    /** How far this goes to that side, by itself or with its rail, beyond the teeth that it has room for. */
    private double slide(String member, Side side) {
        Optional<Engagement> engagement = engagement(member, side);
        if (engagement.filter(Engagement.Meshes.class::isInstance).isPresent()) {
            return Strokes.INTO_MESH;
        }
        return engagement.isPresent() || new Strokes(layout).goesAlong(member, side) ? Strokes.OVER_TEETH : 0;
    }

    private boolean isInSet(String id) {
        return layout.find(Gear.class, id).filter(planets::isInSet).isPresent();
    }

    private Optional<Engagement> engagement(String member, Side side) {
        return layout.members().stream()
                .filter(one -> one.part().equals(member))
                .findFirst()
                .flatMap(one -> one.at(side));
    }

    /** What stands on the shaft: the gear itself, or the sleeve whose rim it is. */
    private String carrierOf(String id) {
        return layout.find(Gear.class, id)
                .filter(gear -> gear.seat() == Seat.RIM)
                .map(Gear::carrier)
                .orElse(id);
    }
}
