package org.layshaft.engine.fit;

import java.util.List;
import java.util.stream.Stream;

/**
 * Whether a set serves at one place of one box, with everything that every check says.
 *
 * @param companions the smallest sets of further parts with which it does, where it does not as it is; all the same in
 *     number
 * @param judgements with the set alone put in
 */
public record Serving(
        BuiltBox box,
        Placement placement,
        FitVerdict verdict,
        List<Companions> companions,
        List<Judgement> judgements) {
    public Serving {
        companions = List.copyOf(companions);
        judgements = List.copyOf(judgements);
    }

    public Stream<Judgement> failing() {
        return judgements.stream().filter(Judgement::fails);
    }

    /** What could not be told, each once. */
    public List<Missing> missing() {
        return judgements.stream()
                .flatMap(judgement -> judgement.missing().stream())
                .distinct()
                .toList();
    }

    /** The box with the set in it, and the first of its companions where it needs any. */
    public Fitted fittedThen() {
        Fitted with = box.fitted().with(placement.parts());
        return companions.isEmpty() ? with : with.with(companions.get(0).parts());
    }
}
