package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** Where along a line a shaft is tied to something, front to rear: what sits on it, its arms to planets, its ends. */
record Stands(List<Stand> all) {
    private static final double SLACK = 1;

    /**
     * One of them.
     *
     * @param id of what is tied there
     */
    record Stand(String id, double left, double right) {
        double x() {
            return (left + right) / 2;
        }
    }

    static Stands of(Layout layout, Sizes sizes, Columns columns, Shaft shaft) {
        List<Stand> stands = new ArrayList<>();
        PlanetSides sides = new PlanetSides(layout, columns, sizes);
        Planets planets = new Planets(layout);
        List<String> noses =
                Lines.between(layout).stream().map(bearing -> bearing.id()).toList();
        for (String id : shaft.along()) {
            double x = columns.of(id);
            double half = sizes.half(id);
            Optional<Gear> ring = layout.find(Gear.class, id).filter(planets::isRing);
            if (ring.isPresent()) {
                stands.add(sides.web(ring.get()));
            } else if (!noses.contains(id)) {
                stands.add(new Stand(id, x - half, x + half));
            }
        }
        planets.spindles().stream()
                .filter(spindle ->
                        spindle.carriedBy().filter(shaft.id()::equals).isPresent())
                .forEach(spindle -> stands.add(sides.arm(spindle)));
        layout.all(Differential.class).forEach(differential -> {
            double x = columns.of(differential.id());
            double half = sizes.half(differential.id());
            if (differential.shaft().filter(shaft.id()::equals).isPresent()) {
                stands.add(new Stand(differential.id(), x - 2, x + 2));
            } else if (differential.sides().contains(shaft.id())) {
                boolean behind = shaft.along().stream()
                                .mapToDouble(columns::of)
                                .average()
                                .orElse(x + 1)
                        > x;
                stands.add(
                        behind
                                ? new Stand(differential.id(), x + EndFigures.SIDE_GEAR, x + half)
                                : new Stand(differential.id(), x - half, x - EndFigures.SIDE_GEAR));
            }
        });
        layout.all(Joint.class)
                .filter(joint -> joint.from().equals(shaft.id()) || joint.to().equals(shaft.id()))
                .forEach(joint -> {
                    double x = columns.of(joint.id());
                    boolean front = joint.from().equals(shaft.id());
                    stands.add(new Stand(joint.id(), front ? x - 2 : x, front ? x : x + 2));
                });
        layout.all(Clutch.class)
                .filter(clutch ->
                        clutch.drivenBy().isPresent() && clutch.drives().equals(shaft.id()))
                .forEach(clutch -> stands.add(InnerClutch.hub(clutch.id(), columns.of(clutch.id()))));
        stands.sort(Comparator.comparingDouble(Stand::x));
        return new Stands(stands);
    }

    double left() {
        return all.stream().mapToDouble(Stand::left).min().orElse(0);
    }

    double right() {
        return all.stream().mapToDouble(Stand::right).max().orElse(0);
    }

    boolean covers(double x) {
        return left() - SLACK < x && x < right() + SLACK;
    }

    double shared(Stands other) {
        return Math.min(right(), other.right()) - Math.max(left(), other.left());
    }
}
