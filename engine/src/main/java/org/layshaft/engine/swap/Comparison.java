package org.layshaft.engine.swap;

import java.util.List;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;

/**
 * A box in its vehicle before a change and after it, side by side.
 *
 * @param gears one for each place of the levers that gives a gear, in the order before; new ones after these
 * @param speedometer what it has to do with the reading of a speedometer that read truly
 * @param conflicts every two gears on different rails, in the order before
 * @param pairs those of which a gear is changed, or the side of its crown
 * @param axlesBefore every two axles that were tied in any gear
 * @param axlesAfter the same after the change; where two do not match, the box is locked on the road
 */
public record Comparison(
        Installed before,
        Installed after,
        List<GearComparison> gears,
        Telling<SpeedometerChange> speedometer,
        List<ConflictComparison> conflicts,
        List<PairComparison> pairs,
        List<TiedAxles> axlesBefore,
        List<TiedAxles> axlesAfter) {
    public Comparison {
        gears = List.copyOf(gears);
        conflicts = List.copyOf(conflicts);
        pairs = List.copyOf(pairs);
        axlesBefore = List.copyOf(axlesBefore);
        axlesAfter = List.copyOf(axlesAfter);
    }

    /**
     * Compares.
     *
     * @param reasoner keeps what it is asked about: for changes that are only tried, one that is let go afterwards
     * @throws org.layshaft.engine.stated.ImpossibleFactsException where the change does not suit the layout, or a fact
     *     makes no sense
     */
    public static Comparison of(
            Layout layout, Change change, Running running, Reasoner reasoner, ContactRatios contacts) {
        Layout changed = change.applyTo(layout);
        Installed before = Installed.of(layout, reasoner, running);
        Installed after = Installed.of(changed, reasoner, running);
        List<GearComparison> gears = new GearsCompared(before, after, running, reasoner).all();
        return new Comparison(
                before,
                after,
                gears,
                new SpeedReading(before, after, change).told(),
                new ConflictsCompared(before, after).all(),
                new PairsTouched(layout, changed, contacts).by(change),
                new AxlePaths(layout).tiedIn(before.box().gears()),
                new AxlePaths(changed).tiedIn(before.box().gears()));
    }

    /** From what the layout tells alone. */
    public static Comparison of(Layout layout, Change change, Running running, Reasoner reasoner) {
        return of(layout, change, running, reasoner, ContactRatios.FROM_LAYOUT_ALONE);
    }

    /** The gear that was called so; throws {@link IllegalArgumentException} where there was none. */
    public GearComparison gear(String nameBefore) {
        return gears.stream()
                .filter(gear -> gear.before()
                        .filter(was -> was.gear().equals(nameBefore))
                        .isPresent())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There was no gear '%s' among %s"
                        .formatted(
                                nameBefore,
                                before.box().gears().stream()
                                        .map(Box.DerivedGear::name)
                                        .toList())));
    }

    /** Whether every place of the levers that gave a gear still gives one, and no other does. */
    public boolean gateHolds() {
        return gears.stream()
                .allMatch(gear -> gear.before().isPresent() && gear.after().isPresent());
    }

    /** Whether every place of the levers gives the gear of the same name. */
    public boolean namesHold() {
        return gears.stream().allMatch(GearComparison::nameHolds);
    }

    /** Whether the same pieces keep the same places of the levers apart, and both at once would come to the same. */
    public boolean interlockHolds() {
        return conflicts.stream().allMatch(ConflictComparison::holds);
    }
}
