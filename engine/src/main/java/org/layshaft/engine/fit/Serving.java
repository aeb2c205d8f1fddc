package org.layshaft.engine.fit;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether a set serves at one place of one box, with everything that every check says.
 *
 * @param companions the smallest sets of further parts with which it does, where it does not as it is; all the same in
 *     number
 * @param judgements with the set alone put in
 * @param unlookedAt places of the set that no check has anything to say of
 */
public record Serving(
        BuiltBox box,
        Placement placement,
        FitVerdict verdict,
        List<Companions> companions,
        List<Judgement> judgements,
        Set<String> unlookedAt) {
    public Serving {
        companions = List.copyOf(companions);
        judgements = List.copyOf(judgements);
        unlookedAt = Set.copyOf(unlookedAt);
    }

    public Stream<Judgement> failing() {
        return judgements.stream().filter(Judgement::fails);
    }

    /** What could not be told, each once. */
    public List<Missing> missing() {
        return Stream.concat(
                        judgements.stream().flatMap(judgement -> judgement.missing().stream()),
                        unlookedAt.stream()
                                .map(place -> Missing.check("the %s %s"
                                        .formatted(
                                                box.fitted().nameOf(place),
                                                placement.parts().get(place).number()))))
                .distinct()
                .toList();
    }

    /** The box with the set in it, and the first of its companions where it needs any. */
    public Fitted fittedThen() {
        Fitted with = box.fitted().with(placement.parts());
        return companions.isEmpty() ? with : with.with(companions.get(0).parts());
    }
}
