package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.web.asking.Given;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.RoadWanted;
import org.layshaft.web.asking.WheelsCase;

/** Understands questions about one box at large, about the road and about words, and what is beyond reach. Thread-safe. */
final class OpenListener {
    private static final Pattern WHATS = Pattern.compile("\\bwhat['’]?s\\b");

    /** Readings closer than this are nearly as likely. */
    private static final double AS_LIKELY = 0.1;

    private static final int MOST_OTHERS = 2;

    private final BoxWords words;
    private final OpenPhrases phrases;
    private final TermFinder terms;
    private final Set<List<String>> asides;

    OpenListener(BoxWords words, OpenPhrases phrases, TermFinder terms, Set<List<String>> asides) {
        this.words = words;
        this.phrases = phrases;
        this.terms = terms;
        this.asides = asides;
    }

    /**
     * What was made of a question.
     *
     * @param score how much of it was used, from 0 to 1
     * @param questions one; several where it may be one of several; none where it is declined
     * @param others other readings that are nearly as likely
     */
    record Found(OpenFit fit, double score, List<Question> questions, List<Question> others) {
        /** With other readings that are as likely; it offers a few that are not it. */
        Found with(List<Question> likely) {
            return new Found(
                    fit,
                    score,
                    questions,
                    likely.stream()
                            .distinct()
                            .filter(other -> !questions.contains(other))
                            .limit(MOST_OTHERS)
                            .toList());
        }

        boolean isDeclined() {
            return fit.phrase().intent().equals(OpenPhrases.DECLINED);
        }
    }

    /** The best, if any. */
    Optional<Found> hear(String typed, Function<String, Heard> hearing) {
        Measures measures = Measures.in(typed);
        Heard heard = hearing.apply(WHATS.matcher(measures.text()).replaceAll("what is"));
        List<OpenFitting.Term> named = terms.in(heard.tokens());
        List<OpenFit> fits = new ArrayList<>();
        for (OpenPhrases.Way way : phrases.ways()) {
            new OpenFitting(heard, measures, named, this::isAside).fit(way).ifPresent(fits::add);
        }
        fits.sort(Comparator.comparingDouble(OpenFit::score)
                .thenComparing(OpenFit::taken)
                .reversed());
        Optional<Found> best = Optional.empty();
        List<Question> others = new ArrayList<>();
        for (OpenFit fit : fits) {
            boolean declined = fit.phrase().intent().equals(OpenPhrases.DECLINED);
            List<Question> questions = declined ? List.of() : questions(fit, measures, heard);
            boolean usable = declined || !questions.isEmpty();
            if (best.isEmpty() && usable) {
                best = Optional.of(new Found(fit, fit.score(), questions, List.of()));
            } else if (best.isPresent()
                    && questions.size() == 1
                    && fit.score() >= best.get().score() - AS_LIKELY) {
                others.addAll(questions);
            }
        }
        return best.map(found -> found.with(others));
    }

    List<OpenFitting.Term> terms(Heard heard) {
        return terms.in(heard.tokens());
    }

    boolean isAside(String word) {
        return Heard.LINKS.contains(word) || asides.contains(List.of(word));
    }

    private List<Question> questions(OpenFit fit, Measures measures, Heard heard) {
        String layout = words.layout().id();
        List<String> gears = fit.gears().stream()
                .flatMap(mention -> mention.gear().stream())
                .distinct()
                .toList();
        Given given = measures.given();
        List<String> outputs = words.layout().outputs();
        return switch (Intent.of(fit.phrase().intent()).orElseThrow()) {
            case ROAD ->
                RoadWanted.of(fit.phrase().name()).stream()
                        .<Question>map(wanted ->
                                new Question.OnTheRoad(layout, wanted, gears, onRoad(wanted, measures, gears, heard)))
                        .toList();
            case TORQUE ->
                parts(fit).isEmpty() || outputs.containsAll(parts(fit))
                        ? List.of(new Question.TorqueAt(layout, gears, Optional.empty(), given))
                        : parts(fit).stream()
                                .<Question>map(part -> new Question.TorqueAt(layout, gears, Optional.of(part), given))
                                .toList();
            case COMPARE ->
                fit.boxes().stream()
                        .filter(box -> !box.equals(layout))
                        .limit(1)
                        .<Question>map(box -> new Question.Compared(layout, box, gears))
                        .toList();
            case FREQUENCY ->
                List.of(new Question.Sounding(
                        layout,
                        gears.stream().findFirst(),
                        gears.isEmpty()
                                && heard.tokens().stream()
                                        .anyMatch(token -> token.text().equals("neutral")),
                        withBareRpm(measures)));
            case MESH_FREQUENCY -> List.of(new Question.MeshFrequency(layout, withBareRpm(measures)));
            case DIFFERENTIAL ->
                WheelsCase.of(fit.phrase().name()).stream()
                        .<Question>map(when -> new Question.WheelsDo(layout, when))
                        .toList();
            case TOWED -> List.of(new Question.Towed(layout));
            case DEFINE -> List.of(new Question.Meaning(layout, fit.terms()));
            case EXPLAIN -> List.of(new Question.Explained(layout, fit.phrase().name()));
            case WHICH_GEAR -> whichGear(layout, fit);
            case WHAT_FOR ->
                // of several it is the kind that is asked about, and that has a meaning
                parts(fit).size() == 1
                        ? List.of(new Question.WhatFor(layout, parts(fit).get(0)))
                        : List.of();
            case TEETH -> List.of(new Question.TeethOf(layout, specific(fit)));
            default -> List.of();
        };
    }

    private static List<Question> whichGear(String layout, OpenFit fit) {
        List<String> parts = parts(fit);
        return parts.size() == 1
                ? List.of(new Question.WhichGear(layout, Optional.of(parts.get(0)), fit.side()))
                : List.of(new Question.WhichGear(layout, Optional.empty(), fit.side()));
    }

    private static List<String> specific(OpenFit fit) {
        return fit.parts().stream().allMatch(Mention::isGeneral) ? List.of() : parts(fit);
    }

    private static List<String> parts(OpenFit fit) {
        return fit.parts().stream()
                .flatMap(mention -> mention.parts().stream())
                .distinct()
                .toList();
    }

    /** Direct drive is a ratio of 1; without a gear of the box, a lone ratio beside it is that of the axle. */
    private static Given onRoad(RoadWanted wanted, Measures measures, List<String> gears, Heard heard) {
        Given given = wanted == RoadWanted.PER_1000 ? measures.given() : withBareRpm(measures);
        boolean direct = gears.isEmpty()
                && heard.tokens().stream().anyMatch(token -> token.text().equals("direct"));
        List<Fraction> ratios = given.ratios();
        Optional<Fraction> axle = given.axle();
        boolean ofAxle = axle.isEmpty() && !ratios.isEmpty() && (direct || wanted == RoadWanted.SPEEDOMETER);
        if (ofAxle) {
            axle = Optional.of(ratios.get(0));
            ratios = ratios.subList(1, ratios.size());
        }
        boolean one =
                direct && ratios.isEmpty() && (axle.isPresent() || given.tyre().isPresent());
        return with(given, axle, one ? List.of(Fraction.ONE) : ratios);
    }

    private static Given with(Given given, Optional<Fraction> axle, List<Fraction> ratios) {
        return new Given(
                given.engineRpm(),
                given.speed(),
                given.unit(),
                given.hz(),
                given.torqueNm(),
                axle,
                ratios,
                given.tyre(),
                given.wheelMm(),
                given.teeth());
    }

    private static Given withBareRpm(Measures measures) {
        Given given = measures.given();
        boolean running = given.engineRpm().isPresent() || given.speed().isPresent();
        return running || measures.bare().isEmpty()
                ? given
                : new Given(
                        measures.bare(),
                        given.speed(),
                        given.unit(),
                        given.hz(),
                        given.torqueNm(),
                        given.axle(),
                        given.ratios(),
                        given.tyre(),
                        given.wheelMm(),
                        given.teeth());
    }
}
