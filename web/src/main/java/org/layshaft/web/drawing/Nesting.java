package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/**
 * Which shafts of a line run through which, and how thick each is where: a shaft that others run through is hollow there.
 * A shaft that reaches farther than another runs inside it; of an epicyclic set the sun is inside the carrier and the
 * carrier inside the ring; the case is around everything.
 */
final class Nesting {
    private static final double SLACK = 1;
    /** A shorter stretch side by side is one behind the other. */
    private static final double LEAST_SHARED = 3;

    private final Layout layout;
    private final Map<String, Stands> stands = new LinkedHashMap<>();
    private final Map<String, List<String>> within = new LinkedHashMap<>();
    private final EpicyclicRanks ranks;

    Nesting(Layout layout, Lines lines, Sizes sizes, Columns columns) {
        this.layout = layout;
        this.ranks = new EpicyclicRanks(layout);
        layout.all(Shaft.class)
                .filter(shaft -> shaft.carriedBy().isEmpty())
                .forEach(shaft -> stands.put(shaft.id(), Stands.of(layout, sizes, columns, shaft)));
        layout.all(Shaft.class)
                .filter(shaft -> stands.containsKey(shaft.id()))
                .forEach(shaft -> within.put(
                        shaft.id(),
                        lines.shafts(lines.ofCarrier(shaft.id())).stream()
                                .filter(other -> stands.containsKey(other.id()))
                                .filter(other -> isInside(other, shaft))
                                .map(Shaft::id)
                                .toList()));
    }

    Stands stands(String shaft) {
        return stands.get(shaft);
    }

    /** The shafts that run inside this one somewhere, by id. */
    List<String> within(String shaft) {
        return within.get(shaft);
    }

    /** Of the outside of a shaft at this place. */
    double radius(String shaft, double x) {
        return layout.shaft(shaft).carriedBy().isPresent()
                ? Sizes.SPINDLE_RADIUS
                : Sizes.SHAFT_RADIUS + depth(shaft, x) * Sizes.TUBE;
    }

    /** Of the hole through a shaft at this place; 0 where it is solid. */
    double bore(String shaft, double x) {
        int depth = layout.shaft(shaft).carriedBy().isPresent() ? 0 : depth(shaft, x);
        return depth == 0 ? 0 : Sizes.SHAFT_RADIUS + (depth - 1) * Sizes.TUBE + 1;
    }

    /** How many shafts lie in one another inside this one. */
    private int depth(String shaft, double x) {
        return within.get(shaft).stream()
                .filter(inner -> stands.get(inner).covers(x))
                .mapToInt(inner -> 1 + depth(inner, x))
                .max()
                .orElse(0);
    }

    private boolean isInside(Shaft one, Shaft other) {
        Stands mine = stands.get(one.id());
        Stands theirs = stands.get(other.id());
        if (one.equals(other) || one.held() || mine.shared(theirs) < LEAST_SHARED) {
            return false;
        }
        if (other.held()) {
            return true;
        }
        boolean farther = farther(mine, theirs);
        boolean lessFar = farther(theirs, mine);
        if (farther != lessFar) {
            return farther;
        }
        return rank(one, other) < 0;
    }

    private static boolean farther(Stands one, Stands other) {
        return one.left() < other.left() - SLACK && one.right() > other.right() - SLACK
                || one.right() > other.right() + SLACK && one.left() < other.left() + SLACK;
    }

    /** Negative where the one is rather inside the other. */
    private int rank(Shaft one, Shaft other) {
        List<String> order = new ArrayList<>(layout.parts().keySet());
        Comparator<Shaft> comparator = Comparator.<Shaft>comparingInt(shaft -> ranks.of(shaft.id()))
                .thenComparing(shaft -> -order.indexOf(shaft.id()));
        return comparator.compare(one, other);
    }

    /** What stands on this shaft between two places, and what stands there on those inside it. */
    Stream<Stands.Stand> inside(String shaft, double left, double right) {
        return within.get(shaft).stream()
                .flatMap(inner -> stands.get(inner).all().stream())
                .filter(stand -> stand.right() > left + SLACK && stand.left() < right - SLACK);
    }
}
