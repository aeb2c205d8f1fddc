package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** What can happen to the equations of a layout. */
final class SomeChanges {
    private SomeChanges() {}

    /** Every single change that there is. */
    static List<Changes> single(Layout layout) {
        List<Changes> changes = new ArrayList<>();
        layout.all(Gear.class).map(Gear::id).forEach(gear -> changes.add(stripped(gear)));
        layout.all(Gear.class).filter(gear -> !gear.isFree()).map(Gear::id).forEach(gear -> changes.add(loose(gear)));
        layout.all(Hub.class).map(Hub::id).forEach(hub -> changes.add(loose(hub)));
        layout.all(Gear.class)
                .filter(gear -> gear.isFree() && !layout.shaft(gear.carrier()).held())
                .map(Gear::id)
                .forEach(gear -> changes.add(seized(gear)));
        layout.all(Shaft.class)
                .filter(shaft -> !shaft.held())
                .forEach(shaft -> shaft.along().forEach(item -> changes.add(cut(shaft.id(), item))));
        layout.all(HalfShaft.class).map(HalfShaft::id).forEach(halfShaft -> changes.add(parted(halfShaft)));
        return changes;
    }

    /** Both at once; of two cuts in one shaft, the second. */
    static Changes both(Changes one, Changes other) {
        Map<String, String> cuts = new HashMap<>(one.cuts());
        cuts.putAll(other.cuts());
        return new Changes(
                union(one.strippedGears(), other.strippedGears()),
                union(one.looseSeats(), other.looseSeats()),
                union(one.seizedGears(), other.seizedGears()),
                cuts,
                union(one.partedHalfShafts(), other.partedHalfShafts()));
    }

    static Changes stripped(String gear) {
        return new Changes(Set.of(gear), Set.of(), Set.of(), Map.of(), Set.of());
    }

    static Changes loose(String seat) {
        return new Changes(Set.of(), Set.of(seat), Set.of(), Map.of(), Set.of());
    }

    static Changes seized(String gear) {
        return new Changes(Set.of(), Set.of(), Set.of(gear), Map.of(), Set.of());
    }

    static Changes cut(String shaft, String behind) {
        return new Changes(Set.of(), Set.of(), Set.of(), Map.of(shaft, behind), Set.of());
    }

    static Changes parted(String halfShaft) {
        return new Changes(Set.of(), Set.of(), Set.of(), Map.of(), Set.of(halfShaft));
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> both = new HashSet<>(one);
        both.addAll(other);
        return both;
    }
}
