package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.answering.Answering;
import org.layshaft.web.asking.understanding.Listeners;

/** Questions in words, understood and answered. Thread-safe; never throws for what somebody types. */
public final class Asking {
    /** As much of a question is read, in characters. */
    public static final int LIMIT = 500;

    private final KnowledgeBase knowledge;
    private final Listeners listeners;
    private final Answering answering;

    /** @param diagnostician of the same knowledge */
    public Asking(KnowledgeBase knowledge, Reasoner reasoner, Diagnostician diagnostician, PartsAnswers parts) {
        this.knowledge = knowledge;
        this.listeners = new Listeners(knowledge, reasoner);
        this.answering = new Answering(knowledge, reasoner, diagnostician, parts);
    }

    /**
     * What these words ask.
     *
     * @param layoutId the layout meant where the words name none
     */
    public Understanding understand(Optional<String> layoutId, String words) {
        Understanding understanding = ofParts(layoutId, words).orElseGet(() -> understandAll(layoutId, words));
        return words.length() > LIMIT
                ? understanding.adding("Only the first %d characters were read.".formatted(LIMIT))
                : understanding;
    }

    /** What these words say is wrong with a layout: {@code 3-4 fork bent toward third}, or a fault's written form. */
    public FaultUnderstanding understandFaults(Layout layout, String words) {
        return listeners.of(layout.id()).understandFaults(words);
    }

    /** What these words say is noticed: {@code growls in neutral, quiet in fourth}. */
    public SymptomsHeard understandSymptoms(Layout layout, String words) {
        return listeners.of(layout.id()).understandSymptoms(words);
    }

    /**
     * The answer.
     *
     * @throws org.layshaft.engine.api.UnanswerableException where the question cannot stand
     */
    public Answer answer(Question question) {
        return answering.answer(question);
    }

    private Optional<Understanding> ofParts(Optional<String> layoutId, String words) {
        boolean known = layoutId.isEmpty() || listeners.layouts().contains(layoutId.get());
        return known ? listeners.parts().understand(layoutId, words) : Optional.empty();
    }

    private Understanding understandAll(Optional<String> layoutId, String words) {
        Set<String> meant = new LinkedHashSet<>();
        listeners.any().ifPresent(any -> meant.addAll(any.layoutsNamed(words)));
        if (meant.isEmpty()) {
            layoutId.ifPresentOrElse(meant::add, () -> meant.addAll(listeners.layouts()));
        }
        Optional<String> unknown =
                meant.stream().filter(id -> !listeners.layouts().contains(id)).findFirst();
        if (unknown.isPresent()) {
            List<String> names =
                    knowledge.layouts().values().stream().map(Layout::name).toList();
            return new Understanding.NotUnderstood(
                    "There is no layout '%s'. There are %s.".formatted(unknown.get(), Names.joined(names)), List.of());
        }
        List<Understanding> each =
                meant.stream().map(id -> listeners.of(id).understand(words)).toList();
        return each.isEmpty()
                ? new Understanding.NotUnderstood("No layout is loaded.", List.of())
                : each.size() == 1 ? each.get(0) : ofSeveral(each);
    }

    /** No layout was named: whichever of them the words fit. */
    private static Understanding ofSeveral(List<Understanding> each) {
        List<Understanding.Reading> readings = new ArrayList<>();
        List<String> nearest = new ArrayList<>();
        Optional<Understanding> only = Optional.empty();
        String says = "";
        for (Understanding understanding : each) {
            if (understanding instanceof Understanding.NotUnderstood not) {
                says = says.isEmpty() ? not.says() : says;
                not.nearest().stream().limit(2).forEach(nearest::add);
                continue;
            }
            only = readings.isEmpty() ? Optional.of(understanding) : Optional.empty();
            readings.addAll(
                    understanding instanceof Understanding.Understood understood
                            ? List.of(understood.reading())
                            : ((Understanding.Ambiguous) understanding).readings());
        }
        if (readings.isEmpty()) {
            return new Understanding.NotUnderstood(says, nearest);
        }
        return only.orElse(new Understanding.Ambiguous("It does not say which box is meant.", readings));
    }
}
