package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How likely each suspect is, as far as tests are chosen by it, and what tests would make of that. */
final class Odds {
    /** One observation left over, in hundredths, and a suspect is e times less likely for each of these. */
    private static final double SCALE = 50;

    private final double[] weights;
    private final List<List<Profile>> profiles = new ArrayList<>();

    /** @param suspects the best first */
    Odds(List<Candidate> suspects, Profile.Index index) {
        weights = new double[suspects.size()];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            int behind = suspects.get(i).standing() - suspects.get(0).standing();
            weights[i] = Math.exp(-behind / SCALE);
            sum += weights[i];
            profiles.add(suspects.get(i).ways().stream()
                    .map(way -> index.of(way.entry().shown()))
                    .toList());
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
    }

    double of(int suspect) {
        return weights[suspect];
    }

    /**
     * What each suspect would show of some numbers, with its chance: of what only may be noticed, half.
     *
     * @return by what is noticed, counted from the first of the numbers, the chance with each suspect
     */
    Map<BitSet, double[]> outcomes(BitSet numbers) {
        Map<BitSet, double[]> outcomes = new LinkedHashMap<>();
        for (int i = 0; i < weights.length; i++) {
            List<Profile> ways = profiles.get(i);
            for (Profile way : ways) {
                double half = 0.5 / ways.size();
                outcomes.computeIfAbsent(way.certainOf(numbers), any -> new double[weights.length])[i] += half;
                outcomes.computeIfAbsent(way.possibleOf(numbers), any -> new double[weights.length])[i] += half;
            }
        }
        return outcomes;
    }

    /** How likely an outcome is, suspects taken as likely as they are. */
    double chance(double[] outcome) {
        double chance = 0;
        for (int i = 0; i < weights.length; i++) {
            chance += weights[i] * outcome[i];
        }
        return chance;
    }

    /** How much one expects to learn of which suspect it is, in bits. */
    double bits(Map<BitSet, double[]> outcomes) {
        double bits = 0;
        for (double[] outcome : outcomes.values()) {
            double chance = chance(outcome);
            for (int i = 0; i < weights.length; i++) {
                if (outcome[i] > 0) {
                    bits += weights[i] * outcome[i] * log2(outcome[i] / chance);
                }
            }
        }
        return Math.max(0, bits);
    }

    /** How much one expects to learn by seeing whether it is this one, in bits. */
    double bits(int suspect) {
        double is = weights[suspect];
        return is >= 1 ? 0 : -is * log2(is) - (1 - is) * log2(1 - is);
    }

    private static double log2(double value) {
        return Math.log(value) / Math.log(2);
    }
}
