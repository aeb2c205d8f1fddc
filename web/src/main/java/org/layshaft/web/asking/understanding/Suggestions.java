package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Restating;

/** Whole questions about one box that can be answered, the nearest to some words first. */
final class Suggestions {
    private static final int MOST = 6;

    private final Phrases phrases;
    private final Map<String, Set<String>> questions = new LinkedHashMap<>();

    Suggestions(BoxWords words, Phrases phrases) {
        this.phrases = phrases;
        Restating restating = new Restating(words.knowledge(), words.box());
        for (Question question : answerable(words)) {
            String said = restating.said(question);
            questions.put(said, new HashSet<>(Tokens.normal(said)));
        }
    }

    /** A few questions, nearest first; among equals those that show most that can be asked. */
    List<String> nearest(List<Token> tokens) {
        Set<String> words = new HashSet<>();
        tokens.forEach(token -> words.add(token.text()));
        return questions.entrySet().stream()
                .sorted(Comparator.comparingDouble(question -> -nearness(words, question.getValue())))
                .limit(MOST)
                .map(Map.Entry::getKey)
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
                .limit(1)
                .forEach(fault ->
                        questions.addAll(readings.of(Intent.GEARS_LEFT, List.of(fault), List.of(), List.of())));
        questions.addAll(readings.of(Intent.RATIO, List.of(), List.of(), List.of()));
        questions.addAll(readings.of(Intent.POWER_PATH, List.of(), List.of(), List.of()));
        questions.addAll(readings.of(Intent.WHAT_TURNS, List.of(), List.of(), List.of()));
        questions.addAll(readings.of(Intent.TWO_AT_ONCE, List.of(), List.of(), List.of()));
        for (String gear : gears) {
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
