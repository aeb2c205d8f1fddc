package org.layshaft.engine.suspects;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.layshaft.engine.api.Effort;
import org.layshaft.engine.api.NextTest;
import org.layshaft.kb.failure.Situation;

/** What to try next: in every cell that nobody has tried, and of every part that is suspected. */
final class NextTests {
    /** So many are told of. */
    private static final int TOLD = 10;

    /** So many suspects are held apart; with more, something must be told first. */
    private static final int LEADING = 60;

    /** So many ways of looking at a part are told of. */
    private static final int LOOKED_AT = 4;

    /** More that may come of one test nobody reads; the others are rarer. */
    private static final int OUTCOMES = 12;

    /** What teaches less is not worth the trouble. */
    private static final double LEAST_BITS = 0.02;

    private final Profile.Index index;
    private final TestWords words;
    private final Trials trials;

    NextTests(Profile.Index index, TestWords words, Trials trials) {
        this.index = index;
        this.words = words;
        this.trials = trials;
    }

    /**
     * @param suspects the best first
     * @param says each of them in words
     */
    List<NextTest> of(List<Candidate> suspects, List<String> says) {
        if (suspects.size() < 2) {
            return List.of();
        }
        List<Candidate> leading = suspects.subList(0, Math.min(LEADING, suspects.size()));
        Odds odds = new Odds(leading, index);
        Stream<NextTest> lookedAt = IntStream.range(0, leading.size())
                .filter(i -> !leading.get(i).mode().normal())
                .mapToObj(i -> looking(leading.get(i), says.get(i), i, leading.size(), odds))
                .sorted(BY_WORTH)
                .limit(LOOKED_AT);
        return sorted(Stream.concat(tried(odds), lookedAt));
    }

    /** Only what can be tried, nothing that would have to be taken apart. */
    List<NextTest> trying(List<Candidate> suspects) {
        return suspects.size() < 2 ? List.of() : sorted(tried(new Odds(suspects, index)));
    }

    private Stream<NextTest> tried(Odds odds) {
        return Stream.of(Situation.values()).flatMap(situation -> best(situation, odds).stream());
    }

    private static List<NextTest> sorted(Stream<NextTest> tests) {
        return tests.filter(test -> test.bits() >= LEAST_BITS)
                .sorted(BY_WORTH)
                .limit(TOLD)
                .toList();
    }

    private static final Comparator<NextTest> BY_WORTH =
            Comparator.comparingDouble(NextTest::worth).reversed();

    /** The best to be tried in a situation. */
    private Optional<NextTest> best(Situation situation, Odds odds) {
        return trials.in(situation).map(trial -> test(trial, odds)).max(Comparator.comparingDouble(NextTest::worth));
    }

    private NextTest test(Trial trial, Odds odds) {
        Map<BitSet, double[]> outcomes = odds.outcomes(trial.numbers());
        BitSet any = new BitSet();
        outcomes.keySet().forEach(any::or);
        return new NextTest(
                trial.says(),
                Optional.of(trial.situation()),
                trial.situation().isInGear() ? trial.gears() : List.of(),
                trial.effort(),
                odds.bits(outcomes),
                outcomes.entrySet().stream()
                        .map(entry -> new NextTest.Outcome(
                                words.noticed(entry.getKey(), trial),
                                odds.chance(entry.getValue()),
                                words.evidence(entry.getKey(), any, trial),
                                places(entry.getValue(), true),
                                places(entry.getValue(), false)))
                        .sorted(Comparator.comparingDouble(NextTest.Outcome::chance)
                                .reversed())
                        .limit(OUTCOMES)
                        .toList());
    }

    private static List<Integer> places(double[] outcome, boolean possible) {
        return IntStream.range(0, outcome.length)
                .filter(i -> outcome[i] > 0 == possible)
                .boxed()
                .toList();
    }

    private static NextTest looking(Candidate suspect, String says, int place, int count, Odds odds) {
        List<Integer> others =
                IntStream.range(0, count).filter(i -> i != place).boxed().toList();
        return new NextTest(
                suspect.mode().confirm(),
                Optional.empty(),
                List.of(),
                Effort.of(suspect.mode().seenAt()),
                odds.bits(place),
                List.of(
                        new NextTest.Outcome(says, odds.of(place), List.of(), List.of(place), others),
                        new NextTest.Outcome(
                                "not so: " + says, 1 - odds.of(place), List.of(), others, List.of(place))));
    }
}
