package org.layshaft.web.page;

import java.util.List;

/**
 * The question box.
 *
 * @param question as typed; empty for none
 * @param after the question that was answered, for one that follows it; null for none
 * @param faults what the form passes on
 * @param examples questions that can be asked of this layout
 */
record AskView(
        String layout, String layoutName, String question, String after, List<String> faults, List<LinkView> examples) {
    static AskView of(Scene scene, List<String> examples) {
        Address address = scene.address();
        return new AskView(
                scene.layout().id(),
                scene.layout().name(),
                address.question().orElse(""),
                scene.answered() ? scene.answer().understood() : null,
                address.faults(),
                examples.stream()
                        .map(example -> LinkView.to(
                                example, Address.of(scene.layout().id()).asking(example)))
                        .toList());
    }

    /** Whether nothing is asked or supposed yet. */
    public boolean isStarting() {
        return question.isEmpty() && faults.isEmpty();
    }
}
