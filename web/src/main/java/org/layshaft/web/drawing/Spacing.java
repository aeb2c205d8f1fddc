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

    private final List<Demand> demands = new ArrayList<>();
    private Map<String, Double> forward = new LinkedHashMap<>();

    void place(String id) {
        forward.put(id, 0.0);
    }

    boolean atLeast(String before, String behind, double distance) {
        return accept(List.of(new Demand(before, behind, distance)));
    }

    boolean exactly(String before, String behind, double distance) {
        return accept(List.of(new Demand(before, behind, distance), new Demand(behind, before, -distance)));
    }

    /** Everything half way between as far forward and as far back as it can be. */
    Map<String, Double> places() {
        double end =
                forward.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        Map<String, Double> none = new LinkedHashMap<>();
        forward.keySet().forEach(id -> none.put(id, 0.0));
        Map<String, Double> fromEnd =
                pushed(none, demands.stream().map(Demand::turned).toList()).orElseThrow();
        Map<String, Double> middle = new LinkedHashMap<>();
        forward.forEach((id, place) -> middle.put(id, (place + end - fromEnd.get(id)) / 2));
        return middle;
    }

    private boolean accept(List<Demand> more) {
        List<Demand> all = new ArrayList<>(demands);
        all.addAll(more);
        Optional<Map<String, Double>> pushed = pushed(forward, all);
        pushed.ifPresent(places -> {
            forward = places;
            demands.addAll(more);
        });
        return pushed.isPresent();
    }

    /** From these places, everything pushed back as far as the demands make it; empty where they run in a circle. */
    private static Optional<Map<String, Double>> pushed(Map<String, Double> from, List<Demand> demands) {
        Map<String, Double> places = new LinkedHashMap<>(from);
        for (int round = 0; round <= places.size(); round++) {
            boolean settled = true;
            for (Demand demand : demands) {
                double wanted = places.get(demand.before()) + demand.atLeast();
                if (wanted > places.get(demand.behind()) + SLACK) {
                    places.put(demand.behind(), wanted);
                    settled = false;
                }
            }
            if (settled) {
                return Optional.of(places);
            }
        }
        return Optional.empty();
    }
}
