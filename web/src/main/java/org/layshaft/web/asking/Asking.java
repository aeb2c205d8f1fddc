package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.answering.Answering;
import org.layshaft.web.asking.understanding.Listeners;
import org.layshaft.web.asking.understanding.Mentioned;

/** Questions in words, understood and answered. Thread-safe; never throws for what somebody types. */
public final class Asking {
    /** As much of a question is read, in characters. */
    public static final int LIMIT = 500;

    private static final Pattern IT = Pattern.compile("\\b(?:it|that one|this one|that)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern LEADING =
            Pattern.compile("\\s*(?:and|what about|how about|what if|but|or|so)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern THEN =
            Pattern.compile("\\b(?:then|still|now|in that case)\\b", Pattern.CASE_INSENSITIVE);

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
        Understanding understanding = ofParts(layoutId, words)
                .or(() -> compared(layoutId, words))
                .orElseGet(() -> understandAll(layoutId, words));
        return words.length() > LIMIT
                ? understanding.adding("Only the first %d characters were read.".formatted(LIMIT))
                : understanding;
    }

    /**
     * What these words ask, after another question: "and in fourth?".
     *
     * @param layoutId the layout meant where neither names one
     * @param before the question before, in words; empty for none
     */
    public Understanding understand(Optional<String> layoutId, String words, Optional<String> before) {
        Optional<Question> previous = before.map(asked -> understand(layoutId, asked))
                .filter(Understanding.Understood.class::isInstance)
                .map(understood ->
                        ((Understanding.Understood) understood).reading().question());
        return previous.flatMap(question -> following(question, words)).orElseGet(() -> understand(layoutId, words));
    }

    /** A question that follows another, put so that it needs none before it; the words themselves where they do not. */
    public String standingAlone(Optional<String> layoutId, String words, String before) {
        return Optional.of(understand(layoutId, before))
                .filter(Understanding.Understood.class::isInstance)
                .map(understood ->
                        ((Understanding.Understood) understood).reading().question())
                .flatMap(question -> following(question, words))
                .filter(Understanding.Understood.class::isInstance)
                .map(understood ->
                        ((Understanding.Understood) understood).reading().says())
                .orElse(words);
    }

    private Optional<Understanding> following(Question before, String words) {
        Mentioned now = listeners.of(before.layout()).mentioned(words, listeners.leadIns());
        Following following = new Following(knowledge, before, now);
        Optional<String> layout = Optional.of(before.layout());
        if (now.withoutTerms() || now.bare() && before instanceof Question.Meaning) {
            return following
                    .question()
                    .map(this::understood)
                    .or(() -> elsewhere(before, now))
                    .or(() -> following.failuresInWords().stream()
                            .map(failure -> understand(layout, failure))
                            .filter(Understanding.Understood.class::isInstance)
                            .findFirst()
                            .map(understanding -> with(before, understanding)));
        }
        Understanding alone = understand(layout, words);
        boolean standsAlone = alone instanceof Understanding.Understood
                && !LEADING.matcher(words).lookingAt();
        if (IT.matcher(words).find() && !standsAlone) {
            Optional<Understanding> replaced = following
                    .it()
                    .map(it -> IT.matcher(words).replaceFirst(it.replace("$", "")))
                    .map(said -> understand(layout, said))
                    .filter(Understanding.Understood.class::isInstance);
            if (replaced.isPresent()) {
                return replaced.map(understanding -> with(before, understanding));
            }
        }
        return THEN.matcher(words).find()
                ? Optional.of(alone)
                        .filter(Understanding.Understood.class::isInstance)
                        .map(understanding -> ((Understanding.Understood) understanding)
                                .reading()
                                .question())
                        .map(question -> understood(Following.supposing(question, before.faults())))
                : Optional.empty();
    }

    /** The question before, of another box. */
    private Optional<Understanding> elsewhere(Question before, Mentioned now) {
        return now.layouts().stream()
                .filter(other -> !other.equals(before.layout()))
                .findFirst()
                .map(other -> {
                    String here =
                            knowledge.layout(before.layout()).orElseThrow().name();
                    String there = knowledge.layout(other).orElseThrow().name();
                    return understand(Optional.of(other), restated(before).replace(here, there));
                });
    }

    private Understanding with(Question before, Understanding understanding) {
        Understanding.Understood understood = (Understanding.Understood) understanding;
        Question question = Following.with(before, understood.reading().question());
        return new Understanding.Understood(
                new Understanding.Reading(question, restated(question)), understood.others());
    }

    private Understanding understood(Question question) {
        return new Understanding.Understood(new Understanding.Reading(question, restated(question)), List.of());
    }

    private String restated(Question question) {
        return listeners.of(question.layout()).restated(question);
    }

    /**
     * Questions that begin as somebody types, likeliest first.
     *
     * @param layoutId the layout that is looked at
     */
    public List<String> completions(Optional<String> layoutId, String begun) {
        return layoutId.filter(listeners.layouts()::contains)
                .or(() -> listeners.layouts().stream().findFirst())
                .map(id -> Completing.of(begun, listeners.of(id).offered()))
                .orElse(List.of());
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

    /** Whether the answer is the same for every box, but for what it shows of one. */
    private static boolean isGeneral(Question question) {
        return question instanceof Question.Meaning
                || question instanceof Question.Explained
                || question instanceof Question.MeshFrequency;
    }

    /** A comparison is about two boxes, and not about one or the other. */
    private Optional<Understanding> compared(Optional<String> layoutId, String words) {
        List<String> named = listeners.any().map(any -> any.layoutsNamed(words)).orElse(List.of()).stream()
                .filter(listeners.layouts()::contains)
                .toList();
        Optional<String> here = layoutId.filter(listeners.layouts()::contains)
                .filter(id -> named.size() < 2 || named.contains(id))
                .or(() -> named.stream().findFirst());
        return named.isEmpty()
                ? Optional.empty()
                : here.flatMap(id -> listeners.of(id).understandAtLarge(words, Intent.COMPARE));
    }

    /** No layout was named: whichever of them the words fit. */
    private static Understanding ofSeveral(List<Understanding> each) {
        List<Understanding.Reading> readings = new ArrayList<>();
        List<String> nearest = new ArrayList<>();
        Optional<Understanding> only = Optional.empty();
        String says = "";
        for (Understanding understanding : each) {
            if (understanding instanceof Understanding.Declined
                    || understanding instanceof Understanding.Understood understood
                            && isGeneral(understood.reading().question())) {
                return understanding;
            }
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
