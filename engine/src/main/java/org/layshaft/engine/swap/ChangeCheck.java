package org.layshaft.engine.swap;

import java.util.List;
import java.util.Locale;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Objections;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Road;

/** Whether a change suits a layout. */
record ChangeCheck(Layout layout, Change change) {
    /** As few as the format of layouts allows. */
    static final int FEWEST_TEETH = 5;

    /** Throws {@link org.layshaft.engine.stated.ImpossibleFactsException} with everything that does not. */
    void check() {
        Objections objections = new Objections();
        change.gears().forEach((id, gear) -> gear(id, gear, objections));
        change.crowns().forEach(id -> crown(id, objections));
        objections
                .unless(
                        change.axleRatio().isEmpty() || hasAxleBehind(),
                        "%s reaches the wheels by its own final drive, so that there is no axle behind it to change. Change the teeth of its ring gear or of the pinion.",
                        layout.name())
                .unlessPositive(change.axleRatio().map(Fraction::of), "the axle ratio")
                .refuse();
    }

    private boolean hasAxleBehind() {
        return layout.finalDrives().isEmpty()
                || layout.road().flatMap(Road::axleRatio).isPresent();
    }

    private void gear(String id, Gear gear, Objections objections) {
        objections
                .unless(
                        gear.id().equals(id),
                        "For '%s' a gear of the id '%s' is given. Give it the id of the place it goes to.",
                        id,
                        gear.id())
                .unless(
                        gear.teeth() >= FEWEST_TEETH,
                        "%s would have %d teeth. It must have at least %d.",
                        gear.name(),
                        gear.teeth(),
                        FEWEST_TEETH);
        layout.find(Gear.class, id)
                .ifPresentOrElse(there -> place(there, gear, objections), () -> absent(id, objections));
    }

    private static void place(Gear there, Gear gear, Objections objections) {
        objections
                .unless(
                        gear.carrier().equals(there.carrier()) && gear.seat() == there.seat(),
                        "In the place of '%s' goes a gear that sits on '%s', %s; the place is on '%s', %s. Change its teeth, not its place.",
                        there.id(),
                        gear.carrier(),
                        word(gear),
                        there.carrier(),
                        word(there))
                .unless(
                        gear.form() == there.form(),
                        "The teeth of '%s' are %s; in its place goes a gear whose teeth are %s. They must be alike.",
                        there.id(),
                        there.form().word(),
                        gear.form().word());
    }

    private void crown(String id, Objections objections) {
        if (layout.find(Gear.class, id).isEmpty()) {
            absent(id, objections);
            return;
        }
        List<Mesh> bevels = layout.everyMesh()
                .filter(mesh -> mesh.joins(id) && mesh.kind().isBevel())
                .toList();
        objections.unless(
                bevels.size() == 1,
                "'%s' has %d bevel gears in mesh with it. Only a crown with one pinion can go to its other side.",
                id,
                bevels.size());
    }

    private void absent(String id, Objections objections) {
        objections.unless(
                false,
                "%s has no gear '%s'. %s",
                layout.name(),
                id,
                Nearest.advice(id, layout.all(Gear.class).map(Gear::id).toList()));
    }

    private static String word(Gear gear) {
        return gear.seat().name().toLowerCase(Locale.ROOT);
    }
}
