package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.rules.Explainer;
import org.layshaft.engine.rules.fact.Drive;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Mechanism;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;

/**
 * Every two gears on different rails of one lever: what both at once would do, and what keeps them from it.
 *
 * <p>While the interlock keeps two rails apart and both sleeves follow them, a fault elsewhere changes nothing about the
 * pair, so it is told as in the sound box; only pairs that nothing keeps apart are worked out anew.
 */
final class Conflicts {
    private final Layout layout;
    private final SoundBox sound;
    private final Names names;

    Conflicts(Layout layout, SoundBox sound, Names names) {
        this.layout = layout;
        this.sound = sound;
        this.names = names;
    }

    /** All pairs when nothing is wrong. */
    List<Conflict> whenSound() {
        return told(pairs(sound.box()), FaultFacts.none(layout));
    }

    /**
     * All pairs after some faults.
     *
     * @param run the run with these faults, in which it was concluded which rails are still kept apart
     */
    List<Conflict> after(FaultFacts faults, Run run) {
        List<Mechanism.Pair> all = pairs(sound.box());
        List<Mechanism.Pair> free =
                all.stream().filter(pair -> keptApart(run, pair).isEmpty()).toList();
        Map<List<String>, Conflict> anew = (free.isEmpty() ? List.<Conflict>of() : told(free, faults))
                .stream().collect(Collectors.toMap(Conflict::gears, Function.identity()));
        Map<List<String>, Conflict> staying = staying(all, run);
        return sound.conflicts(names).stream()
                .map(conflict -> anew.getOrDefault(conflict.gears(), conflict))
                .map(conflict -> staying.getOrDefault(conflict.gears(), conflict))
                .toList();
    }

    /** Pairs that meet when one gear is selected, since the other stays engaged; no interlock keeps them from it. */
    private Map<List<String>, Conflict> staying(List<Mechanism.Pair> pairs, Run run) {
        Explainer explainer = new Explainer(run.derivation(), names);
        Map<List<String>, Conflict> staying = new HashMap<>();
        for (Mechanism.Pair pair : pairs) {
            run.derivation()
                    .find(Mechanism.StaysEngaged.class, stays -> stays.joins(pair.oneGear(), pair.otherGear()))
                    .ifPresent(stays -> {
                        List<Reason> because = Stream.concat(Stream.of(stays), contradictions(run, stays.selected()))
                                .map(explainer::why)
                                .toList();
                        List<String> gears = List.of(pair.oneGear(), pair.otherGear());
                        Motion.Outcome outcome = run.motion(stays.selected()).outcome();
                        staying.put(gears, new Conflict(gears, outcome, List.of(), true, because));
                    });
        }
        return staying;
    }

    private static Stream<Drive.Contradiction> contradictions(Run run, String at) {
        return run.derivation()
                .all(Drive.Contradiction.class)
                .filter(contradiction -> contradiction.at().equals(at));
    }

    private List<Conflict> told(List<Mechanism.Pair> pairs, FaultFacts faults) {
        Map<String, Selection> byGear =
                sound.selections().stream().collect(Collectors.toMap(Selection::at, Function.identity()));
        List<Selection> both = pairs.stream()
                .flatMap(pair -> Stream.of(pair.oneGear(), pair.otherGear())
                        .map(byGear::get)
                        .map(gear -> new Selection(pair.at(), gear.pushes())))
                .toList();
        List<Fact> facts = new ArrayList<>(sound.facts());
        facts.addAll(pairs);
        Run run = Run.of(layout, faults, both, facts);
        pairs.forEach(pair -> Agreement.require(run, pair.at()));
        return pairs.stream().map(pair -> conflict(run, pair)).toList();
    }

    private Conflict conflict(Run run, Mechanism.Pair pair) {
        Explainer explainer = new Explainer(run.derivation(), names);
        Optional<Mechanism.CanMeet> canMeet = run.derivation()
                .find(Mechanism.CanMeet.class, meets -> meets.at().equals(pair.at()));
        Optional<Mechanism.KeptApart> keptApart = keptApart(run, pair);
        Stream<Mechanism.LetGo> letGo = run.derivation()
                .all(Mechanism.LetGo.class)
                .filter(gone -> gone.oneRail().equals(pair.oneRail())
                        && gone.otherRail().equals(pair.otherRail()));
        List<Reason> because = Stream.of(canMeet.stream(), letGo, keptApart.stream(), contradictions(run, pair.at()))
                .flatMap(facts -> facts)
                .map(explainer::why)
                .toList();
        return new Conflict(
                List.of(pair.oneGear(), pair.otherGear()),
                run.motion(pair.at()).outcome(),
                keptApart.map(kept -> pieces(run, kept)).orElse(List.of()),
                canMeet.isPresent(),
                because);
    }

    private static Optional<Mechanism.KeptApart> keptApart(Run run, Mechanism.Pair pair) {
        return run.derivation()
                .find(
                        Mechanism.KeptApart.class,
                        kept -> kept.oneRail().equals(pair.oneRail())
                                && kept.otherRail().equals(pair.otherRail()));
    }

    private static List<String> pieces(Run run, Mechanism.KeptApart kept) {
        return run.derivation().stepOf(kept).stream()
                .flatMap(step -> step.premises().stream())
                .filter(Mechanism.Between.class::isInstance)
                .flatMap(between -> ((Mechanism.Between) between).pieces().stream())
                .toList();
    }

    /**
     * Every two gears that one lever selects by different rails, the others standing alike, named in the order of the
     * rails across the box. Each two places of a lever are told once, with the others where they first come together.
     */
    private static List<Mechanism.Pair> pairs(Box box) {
        List<String> rails = box.layout().gate().planes();
        Set<Set<Box.Push>> told = new HashSet<>();
        List<Box.DerivedGear> gears =
                box.gears().stream().filter(gear -> gear.first().isPresent()).toList();
        return LayoutFacts.pairs(gears.size())
                .map(pair -> List.of(gears.get(pair[0]), gears.get(pair[1])))
                .filter(pair -> !rail(pair.get(0)).equals(rail(pair.get(1))))
                .filter(pair -> beside(pair.get(0)).equals(beside(pair.get(1))))
                .filter(pair -> areOfOneLever(box.layout(), rail(pair.get(0)), rail(pair.get(1))))
                .filter(pair -> told.add(Set.of(first(pair.get(0)), first(pair.get(1)))))
                .map(pair -> rails.indexOf(rail(pair.get(0))) < rails.indexOf(rail(pair.get(1)))
                        ? pair
                        : List.of(pair.get(1), pair.get(0)))
                .map(pair -> new Mechanism.Pair(
                        pair.get(0).name() + "+" + pair.get(1).name(),
                        pair.get(0).name(),
                        pair.get(1).name(),
                        rail(pair.get(0)),
                        rail(pair.get(1))))
                .toList();
    }

    private static String rail(Box.DerivedGear gear) {
        return first(gear).rail();
    }

    private static Box.Push first(Box.DerivedGear gear) {
        return gear.first().orElseThrow();
    }

    private static List<Box.Push> beside(Box.DerivedGear gear) {
        return gear.pushes().stream()
                .filter(push -> !push.rail().equals(rail(gear)))
                .toList();
    }

    private static boolean areOfOneLever(Layout layout, String one, String other) {
        return layout.levers().stream().anyMatch(lever -> selects(lever, one) && selects(lever, other));
    }

    private static boolean selects(Lever lever, String rail) {
        return lever.places().stream().anyMatch(place -> place.pushes().containsKey(rail));
    }
}
