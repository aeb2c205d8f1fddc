package org.layshaft.engine.suspects;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Suspects;
import org.layshaft.engine.symptom.FaultDictionary;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;

/** Where the tests put their questions about the demo boxes. */
final class Desk {
    static final KnowledgeBase KNOWLEDGE =
            PackReader.read(PackSource.onClassPath()).knowledge();
    static final Reasoner REASONER = Reasoners.standard(KNOWLEDGE);
    static final Diagnostician DIAGNOSTICIAN = Reasoners.diagnostician(KNOWLEDGE, REASONER);

    private static final Sorts SORTS = new Sorts(KNOWLEDGE.words());
    private static final Map<String, Book> BOOKS = new ConcurrentHashMap<>();

    private Desk() {}

    static Layout layout(String id) {
        return KNOWLEDGE.layout(id).orElseThrow();
    }

    static Evidence evidence(String layout, String written) {
        return DIAGNOSTICIAN.read(layout(layout), written);
    }

    static Suspects suspects(String layout, String written) {
        return DIAGNOSTICIAN.suspects(layout(layout), evidence(layout, written));
    }

    static Book book(String layout) {
        return BOOKS.computeIfAbsent(layout, id -> Book.of(FaultDictionary.of(KNOWLEDGE, REASONER.box(layout(id)))));
    }

    static Clues clues(String layout, String written) {
        return new Clues(evidence(layout, written), book(layout), SORTS);
    }
}
