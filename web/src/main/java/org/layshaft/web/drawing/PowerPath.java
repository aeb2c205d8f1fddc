package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Motion;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** The parts that carry power, in the order in which it passes them; one way for each end that it reaches. */
record PowerPath(List<List<String>> ways) {
    private static final Set<Class<?>> HELPERS = Set.of(Joint.class, Hub.class, ClutchingTeeth.class, Clutch.class);

    static PowerPath of(Plan plan, Motion motion) {
        if (motion.outcome() != Motion.Outcome.DRIVES) {
            return new PowerPath(List.of());
        }
        List<List<String>> ways = ways(plan, motion, new Joints(plan, false));
        return new PowerPath(ways.isEmpty() ? ways(plan, motion, new Joints(plan, true)) : ways);
    }

    private static List<List<String>> ways(Plan plan, Motion motion, Joints joints) {
        Layout layout = plan.layout();
        Set<String> carrying = layout.parts().keySet().stream()
                .filter(part -> Bodies.carries(motion, part))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        // Hubs and teeth lead from one carrying part to the next even where they are not named among them.
        Predicate<String> wanted = id -> carrying.contains(id)
                || HELPERS.contains(layout.parts().get(id).getClass())
                || layout.find(Shaft.class, id).flatMap(Shaft::carriedBy).isPresent();
        String start = layout.all(Clutch.class)
                .filter(clutch -> clutch.drivenBy().isEmpty())
                .filter(clutch -> clutch.drives().equals(layout.input()))
                .map(Clutch::id)
                .findFirst()
                .orElse(layout.input());
        List<String> ends = ends(layout, carrying);
        List<List<String>> ways = new ArrayList<>();
        ends.stream()
                .map(end -> joints.way(start, end, wanted))
                .filter(way -> !way.isEmpty())
                .forEach(ways::add);
        // Where power goes two ways at once, each gear that the shortest way leaves out has a way of its own.
        carrying.stream()
                .filter(id -> layout.find(Gear.class, id).isPresent())
                .filter(id -> ways.stream().noneMatch(way -> way.contains(id)))
                .toList()
                .forEach(id -> {
                    List<String> through = through(joints, start, id, ends.get(0), wanted);
                    if (!through.isEmpty()) {
                        ways.add(through);
                    }
                });
        return ways;
    }

    /** Whether power passes this part. */
    boolean passes(String part) {
        return ways.stream().anyMatch(way -> way.contains(part));
    }

    private static List<String> ends(Layout layout, Set<String> carrying) {
        return layout.outputs().stream().filter(carrying::contains).toList();
    }

    private static List<String> through(
            Joints joints, String start, String gear, String end, Predicate<String> wanted) {
        List<String> there = joints.way(start, gear, wanted);
        List<String> onward = joints.way(gear, end, id -> wanted.test(id) && !there.contains(id));
        if (there.isEmpty() || onward.isEmpty()) {
            return List.of();
        }
        return Stream.concat(there.stream(), onward.stream().skip(1)).toList();
    }
}
