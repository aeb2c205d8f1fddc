package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToIntFunction;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspects;
import org.layshaft.engine.api.Suspects.Outcome;
import org.layshaft.engine.symptom.FaultDictionary;

/** One question about one layout. */
final class Enquiry {
    /** So many single suspects are told of, those that tie with the last, and every one that fits. */
    private static final int SINGLES = 30;

    private static final int PAIRS = 10;

    private final FaultDictionary dictionary;
    private final Evidence evidence;
    private final Clues clues;
    private final Ranking ranking;
    private final ObservationWords words;
    private final Telling telling;
    private final NextTests nextTests;

    Enquiry(
            FaultDictionary dictionary,
            Evidence evidence,
            Clues clues,
            Ranking ranking,
            ObservationWords words,
            Telling telling,
            NextTests nextTests) {
        this.dictionary = dictionary;
        this.evidence = evidence;
        this.clues = clues;
        this.ranking = ranking;
        this.words = words;
        this.telling = telling;
        this.nextTests = nextTests;
    }

    Suspects answer() {
        Optional<Contradiction> contradiction = Contradiction.in(clues);
        if (contradiction.isPresent()) {
            return cannotBeTold(
                    "'%s' and '%s' cannot both be right. Try it again, and take one of them out."
                            .formatted(
                                    words.say(contradiction.get().seen()),
                                    words.say(contradiction.get().denied())),
                    List.of());
        }
        if (clues.seen().isEmpty()) {
            return cannotBeTold("Nothing is told that was noticed.", anything());
        }
        List<Candidate> ranked = ranking.of(dictionary, clues);
        if (ranked.isEmpty()) {
            return cannotBeTold(
                    "No known fault of %s shows any of what was noticed."
                            .formatted(dictionary.layout().name()),
                    anything());
        }
        int fitting = (int) ranked.stream()
                .takeWhile(candidate -> candidate.assessment().fits())
                .count();
        List<Candidate> listed = head(ranked, Math.max(SINGLES, fitting), Candidate::standing);
        List<Suspect> singles = told(listed, Candidate::standing, telling::candidate);
        List<Suspect> pairs = told(
                head(new Pairing(dictionary, clues, ranking).of(ranked), PAIRS, Pair::standing),
                Pair::standing,
                telling::pair);
        List<NextTest> tests =
                nextTests.of(listed, singles.stream().map(Suspect::says).toList());
        boolean noFault = singles.stream().anyMatch(single -> single.rank() == 1 && single.normal() && single.fits());
        return new Suspects(
                dictionary.layout().id(),
                evidence,
                noFault ? Outcome.NO_FAULT : Outcome.SUSPECTS,
                noFault ? noFault(singles) : why(singles, pairs),
                singles,
                pairs,
                tests);
    }

    /** What to try with a vehicle of which nothing is known; its outcomes name no suspects, since none are listed. */
    private List<NextTest> anything() {
        return nextTests.trying(ranking.ofAll(dictionary, clues)).stream()
                .map(NextTest::withoutSuspects)
                .toList();
    }

    private Suspects cannotBeTold(String why, List<NextTest> tests) {
        String advice = tests.isEmpty()
                ? why
                : "%s It would help to know what is noticed, and what is not: %s."
                        .formatted(why, tests.get(0).says());
        return new Suspects(
                dictionary.layout().id(), evidence, Outcome.CANNOT_BE_TOLD, advice, List.of(), List.of(), tests);
    }

    private static String noFault(List<Suspect> singles) {
        String confirm = singles.stream()
                .filter(Suspect::normal)
                .flatMap(normal -> normal.confirm().stream())
                .findFirst()
                .orElse("");
        return "A sound box may do just this. %s".formatted(confirm);
    }

    private static String why(List<Suspect> singles, List<Suspect> pairs) {
        long fitting = singles.stream().filter(Suspect::fits).count();
        long tied = singles.stream().filter(single -> single.rank() == 1).count();
        String tie = tied > 1 ? " The first %d of them cannot be told apart by this.".formatted(tied) : "";
        if (fitting == 1) {
            return "One fault alone explains everything that was noticed.";
        }
        if (fitting > 1) {
            return "%d faults would each explain everything that was noticed.%s".formatted(fitting, tie);
        }
        return pairs.isEmpty()
                ? "No fault explains everything that was noticed; these come nearest."
                : "No single fault explains everything that was noticed; two at once may.";
    }

    /** So many, and what ties with the last of them. */
    private static <T> List<T> head(List<T> ranked, int most, ToIntFunction<T> standing) {
        if (ranked.size() <= most) {
            return ranked;
        }
        int last = standing.applyAsInt(ranked.get(most - 1));
        return ranked.stream().filter(each -> standing.applyAsInt(each) <= last).toList();
    }

    private static <T> List<Suspect> told(
            List<T> ranked, ToIntFunction<T> standing, BiFunction<T, Integer, Suspect> telling) {
        List<Suspect> told = new ArrayList<>();
        int rank = 1;
        for (int i = 0; i < ranked.size(); i++) {
            if (i > 0 && standing.applyAsInt(ranked.get(i)) > standing.applyAsInt(ranked.get(i - 1))) {
                rank = i + 1;
            }
            told.add(telling.apply(ranked.get(i), rank));
        }
        return told;
    }
}
