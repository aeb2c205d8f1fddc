package org.layshaft.web.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/** Which parts hand power to which in a stance, and the way through them from one to another. */
final class Joints {
    private final Map<String, Set<String>> neighbours = new LinkedHashMap<>();

    Joints(Plan plan, boolean freeGearsSeized) {
        Layout layout = plan.layout();
        layout.all(Clutch.class).filter(clutch -> isClosed(plan, clutch)).forEach(clutch -> {
            join(clutch.id(), clutch.drives());
            clutch.drivenBy().ifPresent(driver -> join(driver, clutch.id()));
        });
        layout.all(Joint.class).forEach(joint -> {
            join(joint.from(), joint.id());
            join(joint.id(), joint.to());
        });
        layout.all(DogRing.class).forEach(dogs -> join(dogs.id(), dogs.shaft()));
        plan.planets().spindles().forEach(spindle -> {
            join(spindle.id(), spindle.carriedBy().orElseThrow());
            plan.planets().gears(spindle).forEach(planet -> join(planet.id(), spindle.id()));
        });
        layout.all(Gear.class)
                .filter(gear -> turnsWithCarrier(layout, gear) || freeGearsSeized && gear.isFree())
                .forEach(gear -> join(gear.id(), gear.carrier()));
        layout.all(Sleeve.class).forEach(sleeve -> join(sleeve.id(), sleeve.hub()));
        layout.all(Hub.class).forEach(hub -> join(hub.id(), hub.shaft()));
        layout.all(ClutchingTeeth.class).forEach(teeth -> join(teeth.id(), teeth.gear()));
        layout.all(Differential.class)
                .forEach(differential -> Stream.concat(differential.shaft().stream(), differential.sides().stream())
                        .forEach(tied -> join(differential.id(), tied)));
        plan.made().forEach(mesh -> join(mesh.first(), mesh.second()));
        layout.members()
                .forEach(member -> plan.stance()
                        .of(member.part())
                        .flatMap(member::at)
                        .filter(Engagement.Couples.class::isInstance)
                        .ifPresent(couples -> join(member.part(), ((Engagement.Couples) couples).clutchingTeeth())));
    }

    /** The clutch before the box always is. */
    private static boolean isClosed(Plan plan, Clutch clutch) {
        return clutch.drivenBy().isEmpty() || plan.stance().of(clutch.id()).isPresent();
    }

    private static boolean turnsWithCarrier(Layout layout, Gear gear) {
        boolean splined = gear.seat() == Seat.SLIDING
                && layout.find(Shaft.class, gear.carrier())
                        .filter(shaft -> !shaft.held())
                        .isPresent();
        return gear.seat() == Seat.FIXED || gear.seat() == Seat.RIM || splined;
    }

    private void join(String one, String other) {
        neighbours.computeIfAbsent(one, key -> new LinkedHashSet<>()).add(other);
        neighbours.computeIfAbsent(other, key -> new LinkedHashSet<>()).add(one);
    }

    /** The shortest way, both ends included, through parts that are wanted; empty where there is none. */
    List<String> way(String from, String to, Predicate<String> wanted) {
        Map<String, String> cameFrom = new LinkedHashMap<>();
        Deque<String> next = new ArrayDeque<>(List.of(from));
        cameFrom.put(from, from);
        while (!next.isEmpty() && !cameFrom.containsKey(to)) {
            String at = next.poll();
            neighbours.getOrDefault(at, Set.of()).stream()
                    .filter(wanted)
                    .filter(part -> cameFrom.putIfAbsent(part, at) == null)
                    .forEach(next::add);
        }
        if (!cameFrom.containsKey(to)) {
            return List.of();
        }
        List<String> way = new ArrayList<>(List.of(to));
        while (!way.get(way.size() - 1).equals(from)) {
            way.add(cameFrom.get(way.get(way.size() - 1)));
        }
        Collections.reverse(way);
        return way;
    }
}
