package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.layshaft.web.asking.Intent;

/** Holds one question against one pattern for questions at large. */
final class OpenFitting {
    /** Words that open a question and say little by themselves. */
    private static final Set<String> OPENERS = Set.of("what", "which", "how", "why", "when", "where", "who");

    private static final double OPENER = 0.3;

    /** A gear, a part or a number that a question does not ask about is much that is left over. */
    private static final double MENTION = 1.5;

    /** A name alone may ask for its meaning, if it asks for nothing else. */
    private static final double BARE = 0.6;

    /** As much as a question can fit that speaks of a failure besides, which this does not ask about. */
    private static final double DOUBTFUL = 0.5;

    private static final Set<Intent> WITH_NUMBERS =
            EnumSet.of(Intent.ROAD, Intent.TORQUE, Intent.FREQUENCY, Intent.MESH_FREQUENCY);
    private static final Set<Intent> WITH_GEARS =
            EnumSet.of(Intent.ROAD, Intent.TORQUE, Intent.FREQUENCY, Intent.COMPARE);

    private final Heard heard;
    private final Measures measures;
    private final List<Term> terms;
    private final Predicate<String> aside;
    private final Set<Integer> taken = new HashSet<>();
    private final List<Mention> gears = new ArrayList<>();
    private final List<Mention> parts = new ArrayList<>();
    private final List<String> boxes = new ArrayList<>();
    private final List<String> named = new ArrayList<>();
    private Optional<String> side = Optional.empty();
    private int numbers;

    /** A term of the trade that is named, and where. */
    record Term(String name, int from, int to) {}

    /** @param aside whether a word changes nothing */
    OpenFitting(Heard heard, Measures measures, List<Term> terms, Predicate<String> aside) {
        this.heard = heard;
        this.measures = measures;
        this.terms = terms;
        this.aside = aside;
    }

    /** Empty where something that has to be there is not. */
    Optional<OpenFit> fit(OpenPhrases.Way way) {
        for (OpenPattern.Element element : way.pattern().elements()) {
            if (!fits(element) && !element.optional()) {
                return Optional.empty();
            }
        }
        // once all is there that has to be, further ways of a piece say the same again
        way.pattern().elements().stream()
                .filter(OpenPattern.Choice.class::isInstance)
                .flatMap(element -> ((OpenPattern.Choice) element).ways().stream())
                .forEach(this::takeWords);
        Optional<Intent> intent = Intent.of(way.phrase().intent());
        if (intent.filter(WITH_GEARS::contains).isPresent()) {
            heard.mentions().stream()
                    .filter(mention -> mention.gear().isPresent() && !taken.contains(mention.from()))
                    .forEach(this::takeGear);
        }
        double matched = weight(taken) + numbers;
        double left = left(intent);
        boolean onlyTerm =
                way.pattern().elements().size() == 1 && way.pattern().elements().get(0) instanceof OpenPattern.Wanted;
        if (onlyTerm && taken.size() < heard.tokens().size()) {
            return Optional.empty();
        }
        return matched == 0
                ? Optional.empty()
                : Optional.of(new OpenFit(
                        way.phrase(),
                        onlyTerm
                                ? BARE
                                : failureIsLeft()
                                        ? Math.min(DOUBTFUL, matched / (matched + left))
                                        : matched / (matched + left),
                        matched,
                        List.copyOf(gears),
                        List.copyOf(parts),
                        List.copyOf(boxes),
                        List.copyOf(named),
                        side));
    }

    private boolean failureIsLeft() {
        return heard.mentions().stream()
                .filter(mention -> !mention.modes().isEmpty() && mention.parts().isEmpty())
                .filter(mention -> !taken.contains(mention.from()))
                .anyMatch(mention ->
                        !OPENERS.contains(heard.word(mention.from())) && !aside.test(heard.word(mention.from())));
    }

    private double left(Optional<Intent> intent) {
        Set<Integer> left = new HashSet<>();
        double size = 0;
        for (int at = 0; at < heard.tokens().size(); at++) {
            Mention mention = heard.startingAt(at).orElse(null);
            boolean much = mention != null
                    && !taken.contains(at)
                    && (mention.gear().isPresent()
                            || mention.isSpecificPart()
                            || !mention.modes().isEmpty())
                    && !OPENERS.contains(heard.word(at))
                    && !aside.test(heard.word(at));
            boolean layout = heard.mentions().stream()
                    .filter(each -> each.one(Meaning.OfLayout.class).isPresent())
                    .anyMatch(covers(at));
            if (much) {
                size += MENTION - 1;
            }
            if (!taken.contains(at) && !layout) {
                left.add(at);
            }
        }
        boolean counts = intent.filter(WITH_NUMBERS::contains).isPresent();
        return size + weight(left) + (counts || measures.isEmpty() ? 0 : MENTION);
    }

    private static Predicate<Mention> covers(int at) {
        return mention -> mention.from() <= at && at < mention.to();
    }

    private double weight(Collection<Integer> places) {
        return places.stream()
                .map(heard::word)
                .mapToDouble(word -> aside.test(word) ? 0 : OPENERS.contains(word) ? OPENER : 1)
                .sum();
    }

    private boolean fits(OpenPattern.Element element) {
        return element instanceof OpenPattern.Choice choice
                ? choice.ways().stream().anyMatch(this::takeWords)
                : takeSlot(((OpenPattern.Wanted) element).slot());
    }

    private boolean takeWords(List<String> way) {
        for (int from = 0; from + way.size() <= heard.tokens().size(); from++) {
            boolean here = true;
            for (int at = 0; at < way.size() && here; at++) {
                here = heard.word(from + at).equals(way.get(at)) && !taken.contains(from + at);
            }
            if (here) {
                take(from, from + way.size());
                return true;
            }
        }
        return false;
    }

    private boolean takeSlot(OpenPattern.Slot slot) {
        return switch (slot) {
            case GEAR -> take(mention -> mention.gear().isPresent(), this::takeGear);
            case PART -> take(mention -> !mention.parts().isEmpty(), this::takePart);
            case BOX -> take(mention -> mention.one(Meaning.OfLayout.class).isPresent(), this::takeBox);
            case SIDE ->
                take(
                        mention -> mention.told().contains("front")
                                || mention.told().contains("rear"),
                        this::takeSide);
            case TERM -> takeTerm();
            case RPM -> number(measures.given().engineRpm().or(measures::bare).isPresent());
            case SPEED -> number(measures.given().speed().isPresent());
            case HZ -> number(measures.given().hz().isPresent());
            case TEETH -> number(measures.given().teeth().isPresent());
            case TORQUE -> number(measures.given().torqueNm().isPresent());
            case AXLE -> number(measures.given().axle().isPresent());
            case TYRE ->
                number(measures.given().tyre().isPresent()
                        || measures.given().wheelMm().isPresent());
            case RATIO -> number(!measures.given().ratios().isEmpty());
        };
    }

    private boolean number(boolean there) {
        numbers += there ? 1 : 0;
        return there;
    }

    private boolean take(Predicate<Mention> wanted, Consumer<Mention> taking) {
        Optional<Mention> found = heard.mentions().stream()
                .filter(mention -> !taken.contains(mention.from()))
                .filter(wanted)
                .findFirst();
        found.ifPresent(taking);
        return found.isPresent();
    }

    private void takeGear(Mention mention) {
        gears.add(mention);
        take(mention.from(), mention.to());
    }

    private void takePart(Mention mention) {
        parts.add(mention);
        take(mention.from(), mention.to());
    }

    private void takeBox(Mention mention) {
        boxes.add(mention.one(Meaning.OfLayout.class).orElseThrow().id());
        take(mention.from(), mention.to());
    }

    private void takeSide(Mention mention) {
        side = mention.told().stream()
                .filter(List.of("front", "rear")::contains)
                .findFirst();
        take(mention.from(), mention.to());
    }

    private boolean takeTerm() {
        for (Term term : terms) {
            if (!taken.contains(term.from())) {
                named.add(term.name());
                take(term.from(), term.to());
                return true;
            }
        }
        return false;
    }

    private void take(int from, int to) {
        for (int at = from; at < to; at++) {
            taken.add(at);
        }
    }
}
