package org.layshaft.web.page;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.page.Examples.Example;

/**
 * The question box.
 *
 * @param question as typed; empty for none
 * @param after the question that was answered, for one that follows it; null for none
 * @param faults what the form passes on
 * @param first a few questions that can be asked of this layout, one of each of what most come for
 * @param subjects every question to start from, by what it is about
 */
record AskView(
        String layout,
        String layoutName,
        String question,
        String after,
        List<String> faults,
        List<LinkView> first,
        List<SubjectView> subjects) {
    private static final List<Intent> FIRST =
            List.of(Intent.GEARS_LEFT, Intent.SUSPECTS, Intent.POWER_PATH, Intent.EXPLAIN);

    /** Questions about one subject. */
    record SubjectView(String heading, List<LinkView> examples) {}

    static AskView of(Scene scene, List<Example> examples) {
        Address address = scene.address();
        String layout = scene.layout().id();
        return new AskView(
                layout,
                scene.layout().name(),
                address.question().orElse(""),
                scene.answered() ? scene.answer().understood() : null,
                address.faults(),
                FIRST.stream()
                        .flatMap(intent -> examples.stream()
                                .filter(example -> example.intent() == intent)
                                .limit(1))
                        .map(example -> link(example, layout))
                        .toList(),
                Stream.of(Subject.values())
                        .map(subject -> new SubjectView(
                                subject.heading(),
                                examples.stream()
                                        .filter(example -> Subject.of(example.intent()) == subject)
                                        .map(example -> link(example, layout))
                                        .toList()))
                        .filter(subject -> !subject.examples().isEmpty())
                        .toList());
    }

    private static LinkView link(Example example, String layout) {
        return LinkView.to(example.text(), Address.of(layout).asking(example.text()));
    }

    /** Whether nothing is asked or supposed yet. */
    public boolean isStarting() {
        return question.isEmpty() && faults.isEmpty();
    }
}
