package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Places things on a line by differences: this one at least so far behind that one, these two exactly so far apart. A
 * demand that contradicts earlier ones is refused, so that whatever was asked, there is an answer.
 */
final class Spacing {
    private static final double SLACK = 1e-6;

    private record Demand(String before, String behind, double atLeast) {
        Demand turned() {
            return new Demand(behind, before, atLeast);
        }
    }

    private final Map<String, Double> places = new LinkedHashMap<>();
    private final List<Demand> demands = new ArrayList<>();

    void place(String id) {
        places.put(id, 0.0);
    }

    boolean atLeast(String before, String behind, double distance) {
        return accept(List.of(new Demand(before, behind, distance)));
    }

    boolean exactly(String before, String behind, double distance) {
        return accept(List.of(new Demand(before, behind, distance), new Demand(behind, before, -distance)));
    }

    /** Everything half way between as far forward and as far back as it can be. */
    Map<String, Double> places() {
        Map<String, Double> forward = leastPlaces(demands).orElseThrow();
        double end =
                forward.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        Map<String, Double> fromEnd =
                leastPlaces(demands.stream().map(Demand::turned).toList()).orElseThrow();
        Map<String, Double> middle = new LinkedHashMap<>();
        forward.forEach((id, place) -> middle.put(id, (place + end - fromEnd.get(id)) / 2));
        return middle;
    }

    private boolean accept(List<Demand> more) {
        demands.addAll(more);
        boolean possible = leastPlaces(demands).isPresent();
        if (!possible) {
            demands.removeAll(more);
        }
        return possible;
    }

    /** Longest paths by relaxation; empty where demands run in a circle. */
    private Optional<Map<String, Double>> leastPlaces(List<Demand> all) {
        Map<String, Double> least = new LinkedHashMap<>(places);
        for (int round = 0; round <= places.size(); round++) {
            boolean settled = true;
            for (Demand demand : all) {
                double wanted = least.get(demand.before()) + demand.atLeast();
                if (wanted > least.get(demand.behind()) + SLACK) {
                    least.put(demand.behind(), wanted);
                    settled = false;
                }
            }
            if (settled) {
                return Optional.of(least);
            }
        }
        return Optional.empty();
    }
}
