package org.layshaft.engine.suspects;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Suspects;
import org.layshaft.engine.symptom.FaultDictionary;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/** Keeps the dictionary of each layout that it has been asked about. Thread-safe. */
public final class StandardDiagnostician implements Diagnostician {
    private final KnowledgeBase knowledge;
    private final Reasoner reasoner;
    private final Sorts sorts;
    private final Map<Layout, Book> books = new ConcurrentHashMap<>();

    /** @param reasoner of the same knowledge */
    public StandardDiagnostician(KnowledgeBase knowledge, Reasoner reasoner) {
        this.knowledge = knowledge;
        this.reasoner = reasoner;
        this.sorts = new Sorts(knowledge.words());
    }

    @Override
    public Suspects suspects(Layout layout, Evidence evidence) {
        Box box = reasoner.box(layout);
        EvidenceCheck.check(layout, evidence, knowledge.words().notices().keySet(), gears(box));
        Book book = books.computeIfAbsent(layout, any -> Book.of(FaultDictionary.of(knowledge, box)));
        FaultDictionary dictionary = book.dictionary();
        Names names = new Names(layout, knowledge.words());
        Clues clues = new Clues(evidence, book, sorts);
        Ranking ranking = new Ranking(evidence.afterWork(), Stroke.sharedBy(evidence, box, names));
        ObservationWords words = new ObservationWords(names, knowledge.words());
        Telling telling = new Telling(dictionary.cells(), clues, ranking, words, fault -> reasoner.say(layout, fault));
        Profile.Index index = new Profile.Index(dictionary.cells(), sorts);
        TestWords testWords = new TestWords(index, words);
        NextTests nextTests = new NextTests(
                index, testWords, new Trials(dictionary.cells(), clues, index, testWords, knowledge.words()));
        return new Enquiry(dictionary, evidence, clues, ranking, words, telling, nextTests).answer();
    }

    @Override
    public Evidence read(Layout layout, String written) {
        Evidence evidence = new Notation(knowledge.words(), gears(reasoner.box(layout))).read(written);
        EvidenceCheck.check(layout, evidence, knowledge.words().notices().keySet(), gears(reasoner.box(layout)));
        return evidence;
    }

    @Override
    public String say(Layout layout, Observation observation) {
        return new ObservationWords(new Names(layout, knowledge.words()), knowledge.words()).say(observation);
    }

    private static List<String> gears(Box box) {
        return box.gears().stream().map(Box.DerivedGear::name).toList();
    }
}
