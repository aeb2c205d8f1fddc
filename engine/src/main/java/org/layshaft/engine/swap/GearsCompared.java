package org.layshaft.engine.swap;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Stance;

/** Puts the gears of two boxes with the same levers side by side, by what the levers push for them. */
record GearsCompared(Installed before, Installed after, Running running, Reasoner reasoner) {

    List<GearComparison> all() {
        Map<List<Box.Push>, Box.DerivedGear> was = before.gearsByPushes();
        Map<List<Box.Push>, Box.DerivedGear> is = after.gearsByPushes();
        Set<List<Box.Push>> places = new LinkedHashSet<>();
        before.box().gears().forEach(gear -> places.add(gear.pushes()));
        after.box().gears().forEach(gear -> places.add(gear.pushes()));
        return places.stream()
                .map(pushes ->
                        compare(pushes, Optional.ofNullable(was.get(pushes)), Optional.ofNullable(is.get(pushes))))
                .toList();
    }

    private GearComparison compare(List<Box.Push> pushes, Optional<Box.DerivedGear> was, Optional<Box.DerivedGear> is) {
        return new GearComparison(
                pushes,
                was.map(new Figuring(before, running)::of),
                is.map(new Figuring(after, running)::of),
                is.map(gear -> gear.motion().outcome())
                        .orElseGet(() -> outcome(was.orElseThrow().stance())));
    }

    private Motion.Outcome outcome(Stance stance) {
        return reasoner.motion(after.layout(), List.of(), stance).outcome();
    }
}
