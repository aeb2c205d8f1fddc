package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fault.Claims;
import org.layshaft.engine.symptom.FaultDictionary;
import org.layshaft.engine.symptom.Shown;

/** Finds two faults that together explain what none does alone. */
final class Pairing {
    /** So many that look best at a glance are worked out. */
    private static final int LOOKED_INTO = 40;

    /** A second fault must explain this much more, in hundredths of one observation, to be worth supposing. */
    private static final int GAIN = 50;

    private final FaultDictionary dictionary;
    private final Clues clues;
    private final Ranking ranking;
    private final Claims claims;

    Pairing(FaultDictionary dictionary, Clues clues, Ranking ranking) {
        this.dictionary = dictionary;
        this.clues = clues;
        this.ranking = ranking;
        this.claims = new Claims(dictionary.layout());
    }

    private record Glance(Way one, Way other, int standing) {}

    /** Pairs in order, one for each two parts and their modes; none where a single candidate fits. */
    List<Pair> of(List<Candidate> candidates) {
        if (candidates.stream().anyMatch(candidate -> candidate.assessment().fits())) {
            return List.of();
        }
        int best = candidates.stream()
                .mapToInt(candidate -> candidate.assessment().shortfall())
                .min()
                .orElse(0);
        return glances(candidates, best - GAIN).stream()
                .limit(LOOKED_INTO)
                .filter(glance -> canBeAtOnce(glance.one(), glance.other()))
                .map(this::together)
                .filter(pair -> gains(pair.assessment().shortfall(), pair.one(), pair.other()))
                .sorted(Comparator.comparingInt(Pair::standing))
                .toList();
    }

    /** @param most the shortfall that they must not exceed */
    private List<Glance> glances(List<Candidate> candidates, int most) {
        List<Glance> glances = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            for (int j = i + 1; j < candidates.size(); j++) {
                Candidate one = candidates.get(i);
                Candidate other = candidates.get(j);
                if (!one.part().id().equals(other.part().id())) {
                    best(one, other, most).ifPresent(glances::add);
                }
            }
        }
        glances.sort(Comparator.comparingInt(Glance::standing));
        return glances;
    }

    private Optional<Glance> best(Candidate one, Candidate other, int most) {
        Glance best = null;
        for (Way first : one.all()) {
            for (Way second : other.all()) {
                int shortfall = Assessment.shortfall(first.assessment(), second.assessment());
                if (shortfall <= most && gains(shortfall, first, second)) {
                    int standing = standing(shortfall, first, second);
                    if (best == null || standing < best.standing()) {
                        best = new Glance(first, second, standing);
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private int standing(int shortfall, Way one, Way other) {
        return shortfall
                + Weights.unlooked(
                        one.assessment().unlooked() + other.assessment().unlooked())
                + ranking.prior(one.entry().mode())
                + ranking.prior(other.entry().mode());
    }

    private static boolean gains(int shortfall, Way one, Way other) {
        return shortfall
                <= Math.min(one.assessment().shortfall(), other.assessment().shortfall()) - GAIN;
    }

    private boolean canBeAtOnce(Way one, Way other) {
        return claims.areAtOne(
                List.of(one.entry().fault(), other.entry().fault()),
                List.of(one.entry().mode(), other.entry().mode()));
    }

    private Pair together(Glance glance) {
        Way one = glance.one();
        Way other = glance.other();
        Shown shown = dictionary.together(List.of(one.entry(), other.entry()));
        Assessment assessment = Assessment.of(shown, clues);
        int standing = assessment.shortfall()
                + Weights.unlooked(assessment.unlooked())
                + ranking.prior(one.entry().mode())
                + ranking.prior(other.entry().mode());
        return new Pair(one, other, shown, assessment, standing);
    }
}
