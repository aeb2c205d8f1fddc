package org.layshaft.engine.whatif;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Verdicts;
import org.layshaft.engine.symptom.Sound;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** The gears of a box in which nothing is wrong, named by derivation, and what each of them needs. */
final class SoundBox {
    private final Box box;
    private final List<Fact> needs;
    private final boolean hasNeutral;
    private List<Conflict> conflicts;
    private Sound equations;

    private SoundBox(Box box, List<Fact> needs, boolean hasNeutral) {
        this.box = box;
        this.needs = needs;
        this.hasNeutral = hasNeutral;
    }

    static SoundBox of(Layout layout) {
        List<Selection> selections = SoundGears.of(layout);
        Run run = Run.of(layout, FaultFacts.none(layout), selections, List.of());
        selections.forEach(selection -> Agreement.require(run, selection.at()));
        List<Box.DerivedGear> gears =
                selections.stream().map(selection -> derived(run, selection)).toList();
        List<Fact> needs = selections.stream()
                .flatMap(selection -> new Needs(layout, run, selection.at()).all().stream())
                .toList();
        return new SoundBox(
                new Box(layout, gears, PrintedRatios.differences(layout, gears)),
                needs,
                run.motion(Run.NEUTRAL).ratio().isEmpty());
    }

    /** Whether there is a neutral: an axle, say, drives whatever is selected. */
    boolean hasNeutral() {
        return hasNeutral;
    }

    Box box() {
        return box;
    }

    /** What the verdict rules must know of the sound gears. */
    List<Fact> facts() {
        Stream<Fact> gears = box.gears().stream().map(gear -> soundGear(gear));
        Stream<Fact> taken = box.gears().stream()
                .flatMap(gear -> gear.pushes().stream()
                        .map(push -> new Verdicts.Takes(gear.name(), push.rail(), push.member(), push.side())));
        Stream<Fact> rings = box.gears().stream()
                .filter(gear -> gear.first().isPresent())
                .map(gear ->
                        hasRing(gear) ? new Verdicts.WithRing(gear.name()) : new Verdicts.WithoutRing(gear.name()));
        Stream<Fact> neutral = hasNeutral ? Stream.of(new Verdicts.HasNeutral()) : Stream.of();
        return Stream.of(gears, neutral, taken, rings, needs.stream())
                .flatMap(facts -> facts)
                .toList();
    }

    /** Every two gears on different rails; worked out once, since nothing about a sound box changes. */
    synchronized List<Conflict> conflicts(Names names) {
        if (conflicts == null) {
            conflicts = new Conflicts(box.layout(), this, names).whenSound();
        }
        return conflicts;
    }

    /** The same by the equations, as what faulty boxes are held against. */
    synchronized Sound equations() {
        if (equations == null) {
            equations = Sound.of(box);
        }
        return equations;
    }

    List<String> gearNames() {
        return box.gears().stream().map(Box.DerivedGear::name).toList();
    }

    /** What the levers do for each gear. */
    List<Selection> selections() {
        return box.gears().stream()
                .map(gear -> new Selection(gear.name(), gear.pushes()))
                .toList();
    }

    /** The gears, by name, that a member engages on a side. */
    Stream<String> gearsAt(String member, Side side) {
        return box.gears().stream()
                .filter(gear ->
                        gear.pushes().stream().anyMatch(push -> push.member().equals(member) && push.side() == side))
                .map(Box.DerivedGear::name);
    }

    static Fraction speed(Box.DerivedGear gear) {
        return gear.motion().ratio().orElseThrow().inverse();
    }

    private static Fact soundGear(Box.DerivedGear gear) {
        return gear.first()
                .map(push -> new Verdicts.SoundGear(gear.name(), push.rail(), push.member(), push.side(), speed(gear)))
                .orElseGet(() -> new Verdicts.SoundGear(gear.name(), "", "", null, speed(gear)));
    }

    private boolean hasRing(Box.DerivedGear gear) {
        return gear.first()
                .filter(push -> box.layout()
                        .member(push.member())
                        .at(push.side())
                        .filter(engagement -> engagement instanceof Engagement.Couples couples
                                && couples.ring().isPresent())
                        .isPresent())
                .isPresent();
    }

    private static Box.DerivedGear derived(Run run, Selection selection) {
        String name = selection.at();
        Motion motion = run.motion(name);
        return new Box.DerivedGear(
                name,
                name.startsWith("R") ? Direction.REVERSE : Direction.FORWARD,
                selection.pushes(),
                motion.ratio().orElseThrow().absolute(),
                run.path(name),
                run.stance(name),
                motion);
    }
}
