package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Joint;
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
        layout.all(Joint.class).map(Joint::id).forEach(joint -> changes.add(parted(joint)));
        if (layout.outputs().size() > 1) {
            layout.outputs().stream()
                    .filter(output -> layout.find(Shaft.class, output).isPresent())
                    .forEach(output -> changes.add(parted(output)));
        }
        layout.all(Bearing.class).map(Bearing::id).forEach(bearing -> changes.add(fast(bearing)));
        return changes;
    }

    /** Both at once; of two cuts in one shaft, the second. */
    static Changes both(Changes one, Changes other) {
        return one.and(other);
    }

    static Changes stripped(String gear) {
        return new Changes(Set.of(gear), Set.of(), Set.of(), Map.of(), Set.of(), Set.of());
    }

    static Changes loose(String seat) {
        return new Changes(Set.of(), Set.of(seat), Set.of(), Map.of(), Set.of(), Set.of());
    }

    static Changes seized(String gear) {
        return new Changes(Set.of(), Set.of(), Set.of(gear), Map.of(), Set.of(), Set.of());
    }

    static Changes cut(String shaft, String behind) {
        return new Changes(Set.of(), Set.of(), Set.of(), Map.of(shaft, behind), Set.of(), Set.of());
    }

    static Changes parted(String part) {
        return new Changes(Set.of(), Set.of(), Set.of(), Map.of(), Set.of(part), Set.of());
    }

    static Changes fast(String bearing) {
        return new Changes(Set.of(), Set.of(), Set.of(), Map.of(), Set.of(), Set.of(bearing));
    }
}
