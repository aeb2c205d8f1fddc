package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the axes lie as one looks along the shafts, in mm from that of the input. Distances are those of the gears; which
 * way an axis lies from its only neighbour no layout tells, and it is put where gears overlap least.
 */
final class Axes {
    private static final int DIRECTIONS = 24;
    /** Straight down is where a countershaft is looked for. */
    private static final double DOWN = Math.PI / 2;

    private final List<Apart> apart;
    private final Map<String, Double> reachMm;
    private final Map<String, Point> places = new LinkedHashMap<>();
    private final Set<String> anyWay = new LinkedHashSet<>();
    private final Set<String> unjoined = new LinkedHashSet<>();
    private final Set<String> contradicted = new LinkedHashSet<>();

    /**
     * @param first the line at the middle
     * @param reachMm by line, how far its gears reach, in the order in which they are placed
     */
    Axes(String first, List<Apart> apart, Map<String, Double> reachMm) {
        this.apart = apart;
        this.reachMm = reachMm;
        places.put(first, new Point(0, 0));
        List<String> left = new ArrayList<>(reachMm.keySet());
        left.remove(first);
        while (!left.isEmpty()) {
            String next = left.stream()
                    .max(Comparator.comparingInt(
                            line -> Math.min(2, placed(line).size())))
                    .orElseThrow();
            left.remove(next);
            places.put(next, place(next));
        }
    }

    Point of(String line) {
        return places.get(line);
    }

    /** Lines of which only one distance is told, so that they may lie any way from there. */
    Set<String> anyWay() {
        return anyWay;
    }

    /** Lines that no gear of a fixed place joins to another. */
    Set<String> unjoined() {
        return unjoined;
    }

    /** Lines whose distances to two others cannot both be so. */
    Set<String> contradicted() {
        return contradicted;
    }

    private List<Apart> placed(String line) {
        return apart.stream()
                .filter(each -> each.joins(line) && places.containsKey(each.otherThan(line)))
                .toList();
    }

    private Point place(String line) {
        List<Apart> to = placed(line);
        if (to.isEmpty()) {
            unjoined.add(line);
            double right = places.entrySet().stream()
                    .mapToDouble(each -> each.getValue().x() + reach(each.getKey()))
                    .max()
                    .orElse(0);
            return new Point(right + reach(line) * 1.15 + 10, 0);
        }
        if (to.size() > 1) {
            List<Point> both = crossing(line, to.get(0), to.get(1));
            if (!both.isEmpty()) {
                return both.stream()
                        .min(Comparator.comparingDouble(point -> overlap(line, point)))
                        .orElseThrow();
            }
            contradicted.add(line);
        } else {
            anyWay.add(line);
        }
        return freest(line, to.get(0));
    }

    private Point freest(String line, Apart to) {
        Point from = places.get(to.otherThan(line));
        Point best = null;
        double least = Double.MAX_VALUE;
        for (int at = 0; at < DIRECTIONS; at++) {
            double angle = DOWN + Math.PI * 2 * ((at + 1) / 2) / DIRECTIONS * (at % 2 == 0 ? 1 : -1);
            Point point = new Point(from.x() + to.mm() * Math.cos(angle), from.y() + to.mm() * Math.sin(angle));
            double overlap = overlap(line, point);
            if (overlap < least - 1e-6) {
                least = overlap;
                best = point;
            }
        }
        return best;
    }

    /** The two points, or the one, at both distances. */
    private List<Point> crossing(String line, Apart to, Apart andTo) {
        Point one = places.get(to.otherThan(line));
        Point other = places.get(andTo.otherThan(line));
        double between = Math.hypot(other.x() - one.x(), other.y() - one.y());
        if (between < 1e-6 || between > to.mm() + andTo.mm() || between < Math.abs(to.mm() - andTo.mm())) {
            return List.of();
        }
        double along = (to.mm() * to.mm() - andTo.mm() * andTo.mm() + between * between) / (2 * between);
        double aside = Math.sqrt(Math.max(0, to.mm() * to.mm() - along * along));
        double ux = (other.x() - one.x()) / between;
        double uy = (other.y() - one.y()) / between;
        return List.of(
                new Point(one.x() + ux * along - uy * aside, one.y() + uy * along + ux * aside),
                new Point(one.x() + ux * along + uy * aside, one.y() + uy * along - ux * aside));
    }

    /** How far its gears would run into those of lines that it does not mesh with, and then how little it keeps from them. */
    private double overlap(String line, Point at) {
        double sum = 0;
        for (Map.Entry<String, Point> other : places.entrySet()) {
            boolean meshes = apart.stream().anyMatch(each -> each.joins(line) && each.joins(other.getKey()));
            double gap = Math.hypot(
                    at.x() - other.getValue().x(), at.y() - other.getValue().y());
            double wanted = meshes ? 0 : reach(line) + reach(other.getKey());
            sum += Math.max(0, wanted - gap);
        }
        return sum;
    }

    private double reach(String line) {
        return reachMm.getOrDefault(line, 0.0);
    }
}
