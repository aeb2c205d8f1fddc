package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.layshaft.engine.symptom.FaultDictionary;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.FailureMode;

/** Puts all that may be wrong in order. */
final class Ranking {
    private final boolean afterWork;
    private final Optional<String> outside;

    /**
     * @param afterWork whether it began after earlier work
     * @param outside why the cause may lie outside the box
     */
    Ranking(boolean afterWork, Optional<String> outside) {
        this.afterWork = afterWork;
        this.outside = outside;
    }

    /** Everything that explains something, the best first; what ties stays in the order of the layout. */
    List<Candidate> of(FaultDictionary dictionary, Clues clues) {
        return ranked(dictionary, clues, Assessment::explainsSomething);
    }

    /** Everything that can be wrong at all. */
    List<Candidate> ofAll(FaultDictionary dictionary, Clues clues) {
        return ranked(dictionary, clues, any -> true);
    }

    private List<Candidate> ranked(FaultDictionary dictionary, Clues clues, Predicate<Assessment> counts) {
        Map<List<String>, List<Way>> groups = new LinkedHashMap<>();
        for (FaultDictionary.Entry entry : dictionary.entries()) {
            Assessment assessment = Assessment.of(entry.shown(), clues);
            if (counts.test(assessment)) {
                groups.computeIfAbsent(List.of(entry.part().id(), entry.mode().name()), any -> new ArrayList<>())
                        .add(new Way(entry, assessment));
            }
        }
        return groups.values().stream()
                .map(this::candidate)
                .sorted(Comparator.comparingInt(Candidate::standing))
                .toList();
    }

    private Candidate candidate(List<Way> ways) {
        int best = ways.stream().mapToInt(Way::fit).min().orElseThrow();
        return new Candidate(
                ways,
                ways.stream().filter(way -> way.fit() == best).toList(),
                best + prior(ways.get(0).entry().mode()));
    }

    /** What stands against a mode before anything is known, less what speaks for it. */
    int prior(FailureMode mode) {
        return Weights.of(mode.common())
                - (afterWork && mode.followsWork() ? Weights.AFTER_WORK : 0)
                - (isRaisedOutside(mode) ? Weights.OUTSIDE : 0);
    }

    /** Why a mode stands higher than how common it is would have it. */
    List<String> reasons(FailureMode mode) {
        List<String> reasons = new ArrayList<>();
        if (afterWork && mode.followsWork()) {
            reasons.add("It comes of work on the vehicle, and there was some.");
        }
        if (isRaisedOutside(mode)) {
            reasons.add(outside.orElseThrow());
        }
        return reasons;
    }

    private boolean isRaisedOutside(FailureMode mode) {
        return outside.isPresent() && mode.seenAt() == Depth.OUTSIDE;
    }
}
