package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.web.asking.Intent;

/**
 * Holds one question against one pattern.
 *
 * <p>The score is what matches over all there is: what matches, what the pattern wants and the question lacks, and what
 * the question has and the pattern does not take.
 */
final class Fitting {
    private static final double SLOT_WEIGHT = 1.2;
    private static final double EXTRA = 0.8;

    /** A part that is named and not asked about by the pattern is much that is left over. */
    private static final double PART_WEIGHT = 2;

    /** A part that is named beside a path may well lie on it. */
    private static final double ON_THE_WAY = 0.2;

    /** A word that weighs more than this shows what is asked. */
    private static final double TELLING = 0.5;

    /** Words that weigh no more than this tell nothing. */
    private static final double ASIDE = 0.2;

    /** After these a gear's number is the gear that is engaged, and not the wheel. */
    private static final Set<String> ENGAGED = Set.of("in", "into", "with", "when");

    private final Phrases phrases;
    private final Rest rest;
    private final List<String> words = new LinkedList<>();
    private final List<Mention> gears;
    private Optional<Mention> part = Optional.empty();
    private double matched;
    private double missing;
    private boolean wordWanted;
    private boolean wordMatched;

    Fitting(Phrases phrases, Rest rest) {
        this.phrases = phrases;
        this.rest = rest;
        this.gears = new ArrayList<>(rest.gears());
        rest.words().forEach(token -> words.add(token.text()));
    }

    Fit fit(Intent intent, Pattern pattern) {
        pattern.elements().forEach(this::fit);
        double extra = new HashSet<>(words)
                .stream()
                        .mapToDouble(word -> phrases.weight(word))
                        .filter(weight -> weight > ASIDE)
                        .sum();
        long wanted = slots(pattern, Pattern.Slot.GEAR);
        extra += SLOT_WEIGHT * Math.max(0, gears.size() - wanted);
        extra += (intent == Intent.POWER_PATH ? ON_THE_WAY : PART_WEIGHT)
                * (rest.parts().size() - (part.filter(rest.parts()::contains).isPresent() ? 1 : 0));
        double score = saysEnough(intent) ? matched / (matched + missing + EXTRA * extra) : 0;
        return new Fit(intent, pattern, score, List.copyOf(gears), part);
    }

    /** Whether a word of the pattern is there, if it wants any; and something that may happen, if that is asked. */
    private boolean saysEnough(Intent intent) {
        return wordMatched == wordWanted && (intent != Intent.WHAT_HAPPENS || rest.faults());
    }

    private void fit(Pattern.Element element) {
        if (element instanceof Pattern.Wanted wanted) {
            score(element, SLOT_WEIGHT, fill(wanted.slot()));
            return;
        }
        Pattern.Choice choice = (Pattern.Choice) element;
        Optional<List<String>> way = choice.ways().stream()
                .filter(words::containsAll)
                .max((one, other) -> Double.compare(weight(one), weight(other)));
        way.ifPresent(found -> found.forEach(words::remove));
        double least = choice.ways().stream().mapToDouble(this::weight).min().orElse(0);
        score(element, way.map(this::weight).orElse(least), way.isPresent());
        boolean telling = !element.optional() && least > TELLING;
        wordWanted |= telling;
        wordMatched |= telling && way.isPresent();
    }

    private void score(Pattern.Element element, double weight, boolean found) {
        matched += found ? weight : 0;
        missing += found || element.optional() ? 0 : weight;
    }

    private boolean fill(Pattern.Slot slot) {
        if (slot == Pattern.Slot.FAULTS) {
            return rest.faults();
        } else if (slot == Pattern.Slot.PART) {
            part = rest.parts().stream().findFirst().or(this::wheel);
            part.ifPresent(gears::remove);
            return part.isPresent();
        }
        return !gears.isEmpty();
    }

    /** A gear's number that can as well be its wheel's. */
    private Optional<Mention> wheel() {
        return gears.stream()
                .filter(mention -> !mention.parts().isEmpty() && !ENGAGED.contains(rest.wordBefore(mention)))
                .findFirst();
    }

    private double weight(List<String> way) {
        return way.stream().mapToDouble(phrases::weight).sum();
    }

    private static long slots(Pattern pattern, Pattern.Slot slot) {
        return pattern.elements().stream()
                .filter(element -> element instanceof Pattern.Wanted wanted && wanted.slot() == slot)
                .count();
    }
}
