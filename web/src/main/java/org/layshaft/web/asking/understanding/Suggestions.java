package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.Given;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Restating;
import org.layshaft.web.asking.RoadWanted;
import org.layshaft.web.asking.WheelsCase;

/** Whole questions about one box that can be answered, the nearest to some words first. */
final class Suggestions {
    private static final int MOST = 5;

    /** So that those offered show what else can be asked. */
    private static final int MOST_OF_A_KIND = 2;

    private final Phrases phrases;
    private final Map<String, Known> questions = new LinkedHashMap<>();

    /** A question that can be answered, by its kind and its words. */
    private record Known(Intent intent, Set<String> words) {}

    Suggestions(BoxWords words, Phrases phrases) {
        this.phrases = phrases;
        Restating restating = new Restating(words.knowledge(), words.box());
        for (Question question : answerable(words)) {
            String said = restating.said(question);
            questions.put(said, new Known(Intent.of(question), new HashSet<>(Tokens.normal(said))));
        }
    }

    /** Every question that is offered. */
    Set<String> all() {
        return questions.keySet();
    }

    /** A few questions, nearest first; among equals those that show most that can be asked. */
    List<String> nearest(List<Token> tokens) {
        Set<String> words = new HashSet<>();
        tokens.forEach(token -> words.add(token.text()));
        Map<String, Double> near = new LinkedHashMap<>();
        questions.forEach((said, of) -> near.put(said, nearness(words, of.words())));
        // what shares nothing with the words is offered only where nothing else is
        boolean any = near.values().stream().anyMatch(each -> each > 0);
        Map<Intent, Integer> ofKind = new EnumMap<>(Intent.class);
        return near.entrySet().stream()
                .filter(question -> !any || question.getValue() > 0)
                .sorted(Comparator.comparingDouble(question -> -question.getValue()))
                .map(Map.Entry::getKey)
                .filter(said -> ofKind.merge(questions.get(said).intent(), 1, Integer::sum) <= MOST_OF_A_KIND)
                .limit(MOST)
                .toList();
    }

    private double nearness(Set<String> words, Set<String> question) {
        double common = 0;
        double rest = 0;
        for (String word : question) {
            double weight = phrases.weight(word);
            common += words.contains(word) ? weight : 0;
            rest += words.contains(word) ? 0 : weight;
        }
        return common < 1 ? 0 : common - 0.15 * rest;
    }

    /** One of each intent first, then every gear, every failure. */
    private static List<Question> answerable(BoxWords words) {
        Readings readings = new Readings(words);
        List<String> gears =
                words.box().gears().stream().map(Box.DerivedGear::name).toList();
        List<Fault> faults = FaultProblems.all(words).toList();
        List<Question> questions = new ArrayList<>();
        faults.stream()
                .filter(fault -> words.part(fault.part()).kind() == PartKind.FORK)
                .findFirst()
                .or(() -> faults.stream().findFirst())
                .ifPresent(fault ->
                        questions.addAll(readings.of(Intent.GEARS_LEFT, List.of(fault), List.of(), List.of())));
        questions.addAll(readings.of(Intent.RATIO, List.of(), List.of(), List.of()));
        questions.addAll(readings.of(
                Intent.POWER_PATH, List.of(), gears.stream().limit(1).toList(), List.of()));
        questions.addAll(readings.of(Intent.WHAT_TURNS, List.of(), List.of(), List.of()));
        questions.addAll(readings.of(Intent.TWO_AT_ONCE, List.of(), List.of(), List.of()));
        String layout = words.layout().id();
        questions.add(new Question.OnTheRoad(layout, RoadWanted.STEPS, List.of(), Given.NOTHING));
        questions.add(new Question.OnTheRoad(layout, RoadWanted.PER_1000, List.of(), Given.NOTHING));
        questions.add(new Question.OnTheRoad(layout, RoadWanted.TOP, List.of(), Given.NOTHING));
        questions.add(new Question.OnTheRoad(layout, RoadWanted.SPEEDOMETER, List.of(), Given.NOTHING));
        questions.add(new Question.Towed(layout));
        for (WheelsCase when : WheelsCase.values()) {
            questions.add(new Question.WheelsDo(layout, when));
        }
        words.knowledge()
                .words()
                .terms()
                .keySet()
                .forEach(term -> questions.add(new Question.Meaning(layout, List.of(term))));
        words.knowledge().words().phrases().stream()
                .filter(phrase -> phrase.intent().equals(Intent.EXPLAIN.word()))
                .forEach(phrase -> questions.add(new Question.Explained(layout, phrase.name())));
        questions.addAll(readings.of(Intent.POWER_PATH, List.of(), List.of(), List.of()));
        for (String gear : gears) {
            questions.add(new Question.TorqueAt(layout, List.of(gear), Optional.empty(), Given.NOTHING));
            questions.addAll(readings.of(Intent.RATIO, List.of(), List.of(gear), List.of()));
            questions.addAll(readings.of(Intent.WHAT_TURNS, List.of(), List.of(gear), List.of()));
            words.layout()
                    .all(Shaft.class)
                    .filter(shaft -> !shaft.held())
                    .forEach(shaft -> questions.addAll(
                            readings.of(Intent.WHICH_WAY, List.of(), List.of(gear), List.of(shaft.id()))));
        }
        for (Fault fault : faults) {
            questions.addAll(readings.of(Intent.GEARS_LEFT, List.of(fault), List.of(), List.of()));
            questions.addAll(readings.of(Intent.WHAT_HAPPENS, List.of(fault), List.of(), List.of()));
        }
        return questions;
    }
}
