package org.layshaft.engine.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.Verdict;

/**
 * A verdict, or what is noticed, in a few plain sentences that a technician could read to a customer: what broke, what
 * that changes, and what comes of it. They are the clauses of the derivation itself, put one after another; links that
 * the faults have no part in are left out, and so are numbers.
 */
public final class Spoken {
    /** More than this nobody listens to. */
    static final int MOST = 5;

    /** A sentence that says more before it comes to its point is not followed. */
    private static final int MOST_PREMISES = 3;

    private final Set<String> said = new LinkedHashSet<>();
    private final List<String> sentences = new ArrayList<>();

    private Spoken() {}

    /** One to five sentences, each with its full stop. */
    public static List<String> of(GearVerdict gear) {
        return of(gear.verdict(), gear.notices(), gear.because());
    }

    /** One to five sentences, each with its full stop; empty where neutral is as it should be and nothing is noticed. */
    public static List<String> of(NeutralVerdict neutral) {
        return of(neutral.verdict(), neutral.notices(), neutral.because());
    }

    /** One to five sentences, each with its full stop. */
    public static List<String> of(Notice notice) {
        return new Spoken().told(List.of(notice.because()));
    }

    private static List<String> of(Verdict verdict, List<Notice> notices, List<Reason> because) {
        return new Spoken()
                .told(
                        verdict == Verdict.WORKS_WITH_NOTICE && !notices.isEmpty()
                                ? notices.stream().map(Notice::because).toList()
                                : because);
    }

    private List<String> told(List<Reason> reasons) {
        if (reasons.stream().anyMatch(Threads::isChoice)) {
            reasons.forEach(this::choices);
            return List.copyOf(sentences);
        }
        Set<String> faults = new LinkedHashSet<>();
        reasons.forEach(reason -> Threads.faults(reason).forEach(faults::add));
        if (!faults.isEmpty()) {
            sentences.add(Clauses.sentence(Clauses.both(List.copyOf(faults))));
        }
        for (Reason reason : reasons) {
            List<String> steps = new ArrayList<>();
            follow(reason, steps);
            sentences.addAll(steps.subList(Math.max(0, steps.size() - MOST + 1), steps.size()));
        }
        return List.copyOf(sentences.subList(0, Math.min(MOST, sentences.size())));
    }

    /** What depends on something that is not known: what may come of it, each with the ways in which it does. */
    private void choices(Reason depends) {
        sentences.add(Clauses.sentence(depends.says()));
        Map<String, List<String>> ways = new LinkedHashMap<>();
        depends.from().forEach(way -> {
            String[] parts = way.says().split(": ", 2);
            ways.computeIfAbsent(parts[1], any -> new ArrayList<>()).add(parts[0]);
        });
        ways.forEach((outcome, conditions) -> sentences.add(Clauses.choice(conditions, outcome)));
    }

    /** The steps from the faults up to this conclusion, each told once, and this last. */
    private void follow(Reason reason, List<String> steps) {
        reason.from().stream().filter(Threads::isStep).forEach(step -> follow(step, steps));
        List<String> premises = Threads.premises(reason)
                .map(Clauses::withoutNumbers)
                .distinct()
                .filter(said::add)
                .limit(MOST_PREMISES)
                .toList();
        String conclusion = Clauses.withoutNumbers(reason.says());
        if (said.add(conclusion)) {
            steps.add(
                    Threads.isNoticed(reason)
                            ? Clauses.noticed(premises, conclusion)
                            : Clauses.so(premises, conclusion));
        } else if (!premises.isEmpty()) {
            steps.add(Clauses.sentence(Clauses.both(premises)));
        }
    }
}
