package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.words.Phrase;
import org.layshaft.kb.words.Words;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.Question;

/** How something comes about: what the packs say of it, and how it is in the box that is looked at. */
final class ExplainedComposer {
    private final Facts facts;
    private final Words words;

    ExplainedComposer(Facts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    Composed compose(Question.Explained question) {
        List<Phrase> subjects = words.phrases().stream()
                .filter(phrase -> phrase.intent().equals(Intent.EXPLAIN.word()))
                .filter(phrase -> phrase.name().equals(question.subject()))
                .toList();
        if (subjects.isEmpty()) {
            throw new UnanswerableException(
                    "No pack explains '%s'. Ask in words, such as \"why does the idler reverse\"."
                            .formatted(question.subject()));
        }
        List<String> says = new ArrayList<>();
        Shown shown = new Shown(facts);
        for (Phrase subject : subjects) {
            says.addAll(subject.says());
            subject.shows().forEach(what -> says.addAll(shown.of(what)));
        }
        return Composed.of(says);
    }
}
