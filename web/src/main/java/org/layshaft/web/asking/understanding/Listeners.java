package org.layshaft.web.asking.understanding;

import java.util.LinkedHashMap;
import java.util.Map;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.pack.KnowledgeBase;

/** One listener for each layout that is known. */
public final class Listeners {
    private Listeners() {}

    /** Listeners by id of their layout, in the order of the packs. */
    public static Map<String, Listener> of(KnowledgeBase knowledge, Reasoner reasoner) {
        Phrases phrases = new Phrases(knowledge.words().phrases());
        Synonyms synonyms = new Synonyms(knowledge.words().terms().values());
        Map<String, Box> boxes = new LinkedHashMap<>();
        Map<String, PartNames> names = new LinkedHashMap<>();
        knowledge.layouts().values().forEach(layout -> {
            boxes.put(layout.id(), reasoner.box(layout));
            names.put(layout.id(), new PartNames(boxes.get(layout.id()), synonyms));
        });
        Map<String, Listener> listeners = new LinkedHashMap<>();
        boxes.forEach((layout, box) -> {
            Map<String, PartNames> others = new LinkedHashMap<>(names);
            others.remove(layout);
            Lexicon lexicon = new LexiconWriter(knowledge, synonyms)
                    .parts(names.get(layout))
                    .gears(box)
                    .failures(box)
                    .layouts()
                    .asides(phrases.asides())
                    .elsewhere(others)
                    .lexicon();
            BoxWords words = new BoxWords(
                    knowledge, box, lexicon, new Belongings(box), new Names(box.layout(), knowledge.words()));
            listeners.put(layout, new Listener(words, phrases));
        });
        return listeners;
    }
}
