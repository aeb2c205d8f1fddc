package org.layshaft.web.asking.understanding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.words.Phrase;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.PartsRestating;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Understanding;
import org.layshaft.web.asking.Understanding.Reading;

/** Understands questions about parts: what fits where, what it is superseded by, what other tyres do. Thread-safe. */
public final class PartsListener {
    /** A question of more words is about something else. */
    /** The international mile. */
    private static final BigDecimal KM_PER_MILE = new BigDecimal("1.609344");

    private static final int MOST_WORDS = 30;

    private static final int MOST_READINGS = 8;

    private final PartsNamed named;
    private final PartsRestating restating;
    private final Set<List<String>> asides;
    private final List<String> layouts;
    private final Map<Intent, List<PartsPattern>> patterns = new EnumMap<>(Intent.class);

    PartsListener(KnowledgeBase knowledge, Synonyms synonyms, Set<List<String>> asides) {
        this.named = new PartsNamed(knowledge, synonyms);
        this.restating = new PartsRestating(knowledge);
        this.asides = asides;
        this.layouts = List.copyOf(knowledge.layouts().keySet());
        for (Phrase phrase : knowledge.words().phrases()) {
            Intent.of(phrase.intent())
                    .filter(Intent::isOfParts)
                    .ifPresent(intent -> patterns.computeIfAbsent(intent, none -> new ArrayList<>())
                            .addAll(phrase.patterns().stream()
                                    .map(pattern -> PartsPattern.of(pattern, named.boxNames()))
                                    .toList()));
        }
    }

    /** Empty where these words ask something else. */
    public Optional<Understanding> understand(Optional<String> layout, String typed) {
        List<String> words = Tokens.normal(typed);
        Optional<String> here = layout.or(() -> layouts.stream().findFirst());
        if (words.size() > MOST_WORDS || here.isEmpty()) {
            return Optional.empty();
        }
        return withFewerAsides(words).stream()
                .flatMap(each -> patterns.entrySet().stream()
                        .flatMap(entry -> entry.getValue().stream()
                                .flatMap(pattern -> pattern.match(each).stream())
                                .flatMap(taken -> understood(entry.getKey(), taken, here.get()).stream())))
                .min(Comparator.comparing(PartsListener::doubt));
    }

    private static int doubt(Understanding understanding) {
        if (understanding instanceof Understanding.Understood) {
            return 0;
        }
        return understanding instanceof Understanding.Ambiguous ? 1 : 2;
    }

    /** The words, and what is left of them when what changes nothing is taken off at either end, bit by bit. */
    private List<List<String>> withFewerAsides(List<String> words) {
        List<List<String>> all = new ArrayList<>(List.of(words));
        for (int at = 0; at < all.size(); at++) {
            List<String> now = all.get(at);
            int size = now.size();
            asides.stream()
                    .filter(aside -> aside.size() < size)
                    .flatMap(aside -> Stream.of(
                            now.subList(0, aside.size()).equals(aside) ? now.subList(aside.size(), size) : now,
                            now.subList(size - aside.size(), size).equals(aside)
                                    ? now.subList(0, size - aside.size())
                                    : now))
                    .filter(less -> !all.contains(less))
                    .forEach(all::add);
        }
        return all;
    }

    /** To a hundredth of a km/h, which no speedometer shows. */
    private static String kmh(String mph) {
        return new BigDecimal(mph)
                .multiply(KM_PER_MILE)
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private Optional<Understanding> understood(Intent intent, PartsPattern.Taken taken, String here) {
        Optional<String> box = taken.in("box").map(named::box).or(() -> built(here));
        String layout = taken.in("box").map(named::box).map(named::layoutOf).orElse(here);
        Optional<String> place = taken.in("place").flatMap(words -> named.place(layout, words));
        if (taken.in("place").isPresent() && place.isEmpty()) {
            return Optional.empty();
        }
        return switch (intent) {
            case FITS -> set(taken, layout, number -> new Question.Fits(layout, number, box, place));
            case SUPPLIED -> set(taken, layout, number -> new Question.Supplied(layout, number));
            case PUT_IN -> set(taken, layout, number -> new Question.PutIn(layout, number, box.orElse(layout), place));
            case NEARER -> nearer(taken, layout, box.orElse(layout));
            case AXLE_FOR ->
                Optional.of(one(new Question.AxleFor(
                        layout,
                        box.orElse(layout),
                        gear(taken, "gear"),
                        taken.in("rpm").orElseThrow(),
                        taken.in("kmh")
                                .or(() -> taken.in("mph").map(PartsListener::kmh))
                                .orElseThrow())));
            case SPEED_GEAR ->
                Optional.of(one(new Question.SpeedGear(
                        layout, box.orElse(layout), taken.in("ratio").orElseThrow())));
            case MEASURED ->
                Optional.of(one(new Question.Measured(
                        layout, taken.in("teeth").orElseThrow(), taken.in("tip"), taken.in("helix"))));
            case FITS_HERE -> box.map(in -> one(new Question.FitsHere(layout, in, place)));
            default ->
                taken.in("from")
                        .flatMap(from -> taken.in("to")
                                .map(to -> one(
                                        new Question.OtherTyres(layout, PartsNamed.tyre(from), PartsNamed.tyre(to)))));
        };
    }

    private Optional<Understanding> nearer(PartsPattern.Taken taken, String layout, String box) {
        Optional<String> gear = gear(taken, "gear");
        Optional<String> other = gear(taken, "other");
        return gear.filter(name -> !gear.equals(other))
                .flatMap(name -> other.map(to -> one(new Question.Nearer(layout, box, name, to))));
    }

    /** By its derived name. */
    private static Optional<String> gear(PartsPattern.Taken taken, String slot) {
        return taken.in(slot).map(name -> name.toUpperCase(Locale.ROOT));
    }

    private Optional<String> built(String layout) {
        return Optional.of(layout).filter(named::isBuilt);
    }

    private interface Asked {
        Question.OfParts about(String number);
    }

    private Optional<Understanding> set(PartsPattern.Taken taken, String layout, Asked asked) {
        String words = taken.in("set").orElse("");
        List<Reading> readings = readings(named.sets(words, layout).stream(), asked);
        if (readings.size() == 1) {
            return Optional.of(new Understanding.Understood(readings.get(0), List.of()));
        } else if (!readings.isEmpty()) {
            return Optional.of(new Understanding.Ambiguous(
                    "“%s” may be one of %d sets or parts.".formatted(words, readings.size()),
                    readings.stream().limit(MOST_READINGS).toList()));
        } else if (PartsNamed.isLikeANumber(words)) {
            return Optional.of(new Understanding.NotUnderstood(
                    "No set or part has the number “%s”.".formatted(words),
                    readings(named.near(words).stream(), asked).stream()
                            .map(Reading::says)
                            .toList()));
        }
        return Optional.empty();
    }

    private List<Reading> readings(Stream<String> numbers, Asked asked) {
        return numbers.map(asked::about).map(this::reading).toList();
    }

    private Understanding one(Question.OfParts question) {
        return new Understanding.Understood(reading(question), List.of());
    }

    private Reading reading(Question.OfParts question) {
        return new Reading(question, restating.said(question));
    }
}
