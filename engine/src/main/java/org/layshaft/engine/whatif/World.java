package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.fault.KnownFault;
import org.layshaft.engine.rules.Explainer;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Verdicts;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Layout;

/** One possibility, everything told: the verdict on each gear by the rules, held against the equations. */
final class World {
    private final List<KnownFault> faults;
    private final String supposed;
    private final Run run;
    private final Names names;
    private final Explainer explainer;
    private final List<Conflict> conflicts;
    private final boolean hasNeutral;

    private World(
            List<KnownFault> faults,
            String supposed,
            Run run,
            Names names,
            List<Conflict> conflicts,
            boolean hasNeutral) {
        this.faults = faults;
        this.supposed = supposed;
        this.run = run;
        this.names = names;
        this.explainer = new Explainer(run.derivation(), names);
        this.conflicts = conflicts;
        this.hasNeutral = hasNeutral;
    }

    /**
     * @param supposed in words, what is supposed here beyond what was told
     */
    static World of(Layout layout, SoundBox sound, Names names, List<KnownFault> faults, String supposed) {
        FaultFacts changed = FaultFacts.of(layout, faults);
        CircumstanceFacts circumstances = CircumstanceFacts.of(sound, faults);
        List<Fact> facts = new ArrayList<>(sound.facts());
        facts.addAll(NoticeFacts.of(layout, changed, circumstances));
        Run run = Run.of(layout, changed, sound.selections(), facts);
        sound.gearNames().forEach(gear -> Agreement.require(run, gear));
        Agreement.require(run, Run.NEUTRAL);
        Agreement.requireVerdicts(run, circumstances.equations());
        List<Conflict> conflicts = new Conflicts(layout, sound, names).after(changed, run);
        return new World(faults, supposed, run, names, conflicts, sound.hasNeutral());
    }

    Run run() {
        return run;
    }

    /** Bodies from input to output; empty where nothing drives. */
    List<PathStep> path(String gear) {
        return holds(Verdicts.NotDriven.class, gear) ? List.of() : run.path(gear);
    }

    Possibility possibility(String gear) {
        List<Notice> notices = notices(gear);
        return new Possibility(told(), supposed, verdict(gear, notices), notices, because(gear));
    }

    Possibility neutral() {
        List<Notice> notices = notices(Run.NEUTRAL);
        Verdict verdict = holds(Verdicts.Locks.class, Run.NEUTRAL)
                ? Verdict.LOCKS
                : drivesOtherwise(Run.NEUTRAL).isPresent()
                        ? Verdict.LOST
                        : notices.stream().allMatch(World::isAtRest) ? Verdict.WORKS : Verdict.WORKS_WITH_NOTICE;
        return new Possibility(told(), supposed, verdict, notices, because(Run.NEUTRAL));
    }

    /** What one sees with the engine stopped, oil on the floor, is no matter of what neutral does. */
    private static boolean isAtRest(Notice notice) {
        return notice.condition().equals(Situation.AT_REST.word());
    }

    boolean hasNeutral() {
        return hasNeutral;
    }

    List<Conflict> conflicts() {
        return conflicts;
    }

    private List<Fault> told() {
        return faults.stream().map(KnownFault::fault).toList();
    }

    private Verdict verdict(String gear, List<Notice> notices) {
        if (holds(Verdicts.Locks.class, gear)) {
            return Verdict.LOCKS;
        }
        if (!holds(Verdicts.Works.class, gear)) {
            return Verdict.LOST;
        }
        return notices.isEmpty() ? Verdict.WORKS : Verdict.WORKS_WITH_NOTICE;
    }

    private boolean holds(Class<? extends Fact> type, String gear) {
        return conclusions(gear).anyMatch(type::isInstance);
    }

    private Optional<Verdicts.DrivesOtherwise> drivesOtherwise(String gear) {
        return conclusions(gear)
                .filter(Verdicts.DrivesOtherwise.class::isInstance)
                .map(Verdicts.DrivesOtherwise.class::cast)
                .findFirst();
    }

    /** The verdicts on this gear: why it is lost first, then that it works, locks or drives otherwise. */
    private Stream<Fact> conclusions(String gear) {
        return Stream.of(
                        run.derivation()
                                .all(Verdicts.Lost.class)
                                .filter(lost -> lost.gear().equals(gear)),
                        run.derivation()
                                .all(Verdicts.Works.class)
                                .filter(works -> works.gear().equals(gear)),
                        run.derivation()
                                .all(Verdicts.Locks.class)
                                .filter(locks -> locks.gear().equals(gear)),
                        run.derivation()
                                .all(Verdicts.DrivesOtherwise.class)
                                .filter(other -> other.gear().equals(gear)),
                        run.derivation()
                                .all(Verdicts.NotDriven.class)
                                .filter(none -> none.gear().equals(gear)))
                .flatMap(facts -> facts);
    }

    /** Everything that follows from a conclusion is told under it: what another reason rests on is not told twice. */
    private List<Reason> because(String gear) {
        List<Reason> reasons = conclusions(gear).map(explainer::why).toList();
        return reasons.stream()
                .filter(reason ->
                        reasons.stream().noneMatch(other -> other.from().contains(reason)))
                .toList();
    }

    /** In the order of situations; what is noticed for certain is not told again as what may be. */
    private List<Notice> notices(String gear) {
        List<Verdicts.Noticed> all = run.derivation()
                .all(Verdicts.Noticed.class)
                .filter(noticed -> noticed.at().equals(gear))
                .sorted(Comparator.comparing(Verdicts.Noticed::situation))
                .toList();
        return all.stream()
                .filter(noticed -> !noticed.may() || all.stream().noneMatch(other -> isCertain(other, noticed)))
                .map(this::told)
                .toList();
    }

    private static boolean isCertain(Verdicts.Noticed one, Verdicts.Noticed perhaps) {
        return !one.may()
                && one.notice().equals(perhaps.notice())
                && one.situation() == perhaps.situation()
                && (one.heat().isEmpty() || one.heat().equals(perhaps.heat()));
    }

    private Notice told(Verdicts.Noticed noticed) {
        return new Notice(
                noticed.notice(),
                noticed.situation().word(),
                noticed.heat(),
                noticed.says(names),
                !noticed.may(),
                explainer.why(noticed));
    }
}
