package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Verdicts;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;

/** The gears of a box in which nothing is wrong, named by derivation, and what each of them needs. */
final class SoundBox implements FaultFacts.Box {
    private final Box box;
    private final List<Fact> needs;
    private List<Conflict> conflicts;

    private SoundBox(Box box, List<Fact> needs) {
        this.box = box;
        this.needs = needs;
    }

    static SoundBox of(Layout layout) {
        List<Selection> selections = selections(layout);
        Run run = Run.of(layout, FaultFacts.none(layout), selections, List.of());
        List<Found> found = selections.stream()
                .flatMap(selection ->
                        run.speedOfOutput(selection.at()).map(speed -> new Found(selection, speed)).stream())
                .toList();
        List<Box.DerivedGear> gears = new ArrayList<>();
        List<Fact> needs = new ArrayList<>();
        named(found).forEach((name, gear) -> {
            gears.add(derived(layout, run, name, gear));
            needs.addAll(new Needs(layout, run, name, gear.selection().at()).all());
        });
        return new SoundBox(new Box(layout, gears, PrintedRatios.differences(layout, gears)), List.copyOf(needs));
    }

    Box box() {
        return box;
    }

    /** What the verdict rules must know of the sound gears. */
    List<Fact> facts() {
        Stream<Fact> gears = box.gears().stream()
                .map(gear -> new Verdicts.SoundGear(gear.name(), gear.rail(), gear.member(), gear.side(), speed(gear)));
        Stream<Fact> ringless =
                box.gears().stream().filter(this::hasNoRing).map(gear -> new Verdicts.WithoutRing(gear.name()));
        return Stream.of(gears, ringless, needs.stream())
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

    /** The lever's selection of each gear. */
    List<Selection> selections() {
        return box.gears().stream()
                .map(gear -> new Selection(gear.name(), gear.rail(), gear.side()))
                .toList();
    }

    @Override
    public Stream<String> gearsAt(String member, Side side) {
        return box.gears().stream()
                .filter(gear -> gear.member().equals(member) && gear.side() == side)
                .map(Box.DerivedGear::name);
    }

    static Fraction speed(Box.DerivedGear gear) {
        return gear.motion().ratio().orElseThrow().inverse();
    }

    private boolean hasNoRing(Box.DerivedGear gear) {
        return box.layout()
                .member(gear.member())
                .at(gear.side())
                .filter(engagement -> engagement instanceof Engagement.Couples couples
                        && couples.ring().isPresent())
                .isEmpty();
    }

    /** Every push of one rail to one side where something engages. */
    private static List<Selection> selections(Layout layout) {
        return layout.all(Rail.class)
                .flatMap(rail -> Stream.of(Side.values())
                        .filter(side -> memberAt(layout, rail, side).isPresent())
                        .map(side -> new Selection(rail.id() + ":" + side.word(), rail.id(), side)))
                .toList();
    }

    private static Optional<String> memberAt(Layout layout, Rail rail, Side side) {
        return rail.forks().stream()
                .map(fork -> layout.the(Fork.class, fork).member())
                .filter(member -> layout.member(member).at(side).isPresent())
                .findFirst();
    }

    private record Found(Selection selection, Fraction speed) {
        Fraction ratio() {
            return speed.absolute().inverse();
        }
    }

    /** Forward gears by falling ratio, then reverse. Forward is the sense that more of the gears share. */
    private static Map<String, Found> named(List<Found> found) {
        int sense = found.stream().mapToInt(gear -> gear.speed().signum()).sum() < 0 ? -1 : 1;
        List<Found> forward = bySense(found, sense);
        List<Found> reverse = bySense(found, -sense);
        Map<String, Found> named = new LinkedHashMap<>();
        for (int i = 0; i < forward.size(); i++) {
            named.put(Integer.toString(i + 1), forward.get(i));
        }
        for (int i = 0; i < reverse.size(); i++) {
            named.put(reverse.size() == 1 ? "R" : "R" + (i + 1), reverse.get(i));
        }
        return named;
    }

    private static List<Found> bySense(List<Found> found, int sense) {
        return found.stream()
                .filter(gear -> gear.speed().signum() == sense)
                .sorted(Comparator.comparing(Found::ratio).reversed())
                .toList();
    }

    private static Box.DerivedGear derived(Layout layout, Run run, String name, Found gear) {
        Selection selection = gear.selection();
        return new Box.DerivedGear(
                name,
                selection.rail(),
                selection.side(),
                memberAt(layout, layout.the(Rail.class, selection.rail()), selection.side())
                        .orElseThrow(),
                name.startsWith("R") ? Direction.REVERSE : Direction.FORWARD,
                gear.ratio(),
                run.path(selection.at()),
                run.stance(selection.at()),
                run.motion(selection.at()));
    }
}
