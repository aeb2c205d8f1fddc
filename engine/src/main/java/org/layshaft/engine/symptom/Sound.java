package org.layshaft.engine.symptom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Changes;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;

/** A layout with nothing wrong, as what every fault is held against. Thread-safe. */
public final class Sound {
    private final Box box;
    private final Map<String, Box.DerivedGear> gears = new LinkedHashMap<>();
    private final Trains trains;
    private final List<Box.Push> neutral;
    private final boolean hasNeutral;
    private final Flanks flanks;
    private final Map<String, Fraction> bend;

    private Sound(Box box) {
        this.box = box;
        box.gears().forEach(gear -> gears.put(gear.name(), gear));
        this.trains = new Trains(box.layout(), Changes.NONE);
        this.neutral = neutralOf(box.layout());
        this.hasNeutral = trains.at(new Shifting(box.layout(), Effects.NONE).stance(neutral))
                .state()
                .motion()
                .ratio()
                .isEmpty();
        this.flanks = new Flanks(box.gears().stream()
                .sorted((one, other) -> one.direction().compareTo(other.direction()))
                .map(gear -> trains.at(gear.stance()).signs())
                .toList());
        this.bend = Bend.of(box.layout());
    }

    public static Sound of(Box box) {
        return new Sound(box);
    }

    /** The world with nothing wrong. */
    public World world() {
        return new World(this, Effects.NONE);
    }

    public Layout layout() {
        return box.layout();
    }

    public List<String> gearNames() {
        return List.copyOf(gears.keySet());
    }

    Box.DerivedGear gear(String name) {
        return gears.get(name);
    }

    boolean hasNeutral() {
        return hasNeutral;
    }

    List<Box.Push> neutral() {
        return neutral;
    }

    Flanks flanks() {
        return flanks;
    }

    Map<String, Fraction> bend() {
        return bend;
    }

    /** Those of the sound box where nothing changes in the equations. */
    Trains trains(Changes changes) {
        return changes.areNone() ? trains : new Trains(layout(), changes);
    }

    /** Every lever in neutral; one that has none stands at its first place. */
    private static List<Box.Push> neutralOf(Layout layout) {
        return layout.levers().stream()
                .filter(lever -> !lever.neutral())
                .flatMap(lever -> lever.places().stream().limit(1))
                .map(Lever.Place::pushes)
                .flatMap(pushes -> pushes.entrySet().stream())
                .flatMap(push -> pushed(layout, push.getKey(), push.getValue()).stream())
                .toList();
    }

    private static List<Box.Push> pushed(Layout layout, String rail, Side side) {
        return layout.find(Rail.class, rail)
                .map(each -> each.forks().stream()
                        .map(fork -> layout.the(Fork.class, fork).member())
                        .filter(member -> layout.member(member).at(side).isPresent())
                        .map(member -> new Box.Push(rail, side, member))
                        .toList())
                .orElseGet(() -> List.of(new Box.Push(rail, side, rail)));
    }
}
