package org.layshaft.engine.fit;

import java.util.LinkedHashSet;
import java.util.Set;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Shaft;

/**
 * What must be set again once parts have been changed: the end float or preload of a shaft or a differential, which
 * hangs on its own length, on its bearings and on what they sit in; the depth and backlash of a bevel pair, which hang on
 * both gears as well.
 *
 * @param endways ids of the shafts and differentials
 * @param bevels ids of the bevel gears, both of each pair
 */
public record SetAgain(Set<String> endways, Set<String> bevels) {
    public SetAgain {
        endways = Set.copyOf(endways);
        bevels = Set.copyOf(bevels);
    }

    /** After new parts at these places. */
    public static SetAgain after(Layout layout, Set<String> places) {
        Set<String> endways = new LinkedHashSet<>();
        places.forEach(place -> layout.find(Part.class, place).ifPresent(part -> add(layout, part, endways)));
        Set<String> bevels = new LinkedHashSet<>();
        layout.everyMesh()
                .filter(mesh -> isBevel(layout, mesh.first()) && isBevel(layout, mesh.second()))
                .filter(mesh -> isMoved(layout, mesh.first(), places, endways)
                        || isMoved(layout, mesh.second(), places, endways))
                .forEach(mesh -> {
                    bevels.add(mesh.first());
                    bevels.add(mesh.second());
                });
        return new SetAgain(endways, bevels);
    }

    private static void add(Layout layout, Part part, Set<String> endways) {
        if (part.kind() == PartKind.BOX_CASE || part.kind() == PartKind.CLUTCH_HOUSING) {
            layout.all(Bearing.class)
                    .filter(bearing -> bearing.outer().equals(Bearing.CASE))
                    .forEach(bearing -> add(layout, bearing, endways));
            layout.all(Differential.class).map(Differential::id).forEach(endways::add);
        } else if (part instanceof Shaft shaft && !shaft.held() || part instanceof Differential) {
            endways.add(part.id());
        } else if (part instanceof Bearing bearing
                && layout.find(Gear.class, bearing.outer()).isEmpty()) {
            endways.add(bearing.inner());
        } else if (part instanceof Fitting fitting && fitting.kind() == PartKind.CARRIER_BEARINGS) {
            fitting.of().ifPresent(endways::add);
        }
    }

    private static boolean isBevel(Layout layout, String gear) {
        return layout.gear(gear).form() == GearForm.BEVEL;
    }

    private static boolean isMoved(Layout layout, String gear, Set<String> places, Set<String> endways) {
        return places.contains(gear) || endways.contains(layout.gear(gear).carrier());
    }
}
