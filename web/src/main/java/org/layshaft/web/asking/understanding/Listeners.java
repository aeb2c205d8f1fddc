package org.layshaft.web.asking.understanding;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/** One listener for each layout that is known, made when it is first asked about. Thread-safe. */
public final class Listeners {
    /** The name under which packs list words that lead from one question to the next. */
    private static final String FOLLOWING = "following";

    private final KnowledgeBase knowledge;
    private final Reasoner reasoner;
    private final Phrases phrases;
    private final SymptomPhrases symptomPhrases;
    private final Synonyms synonyms;
    private final PartsListener parts;
    private final OpenPhrases open;
    private final TermFinder terms;
    private final Set<List<String>> leadIns;
    private final Map<String, PartNames> namesElsewhere = new LinkedHashMap<>();
    private final Map<String, Listener> made = new ConcurrentHashMap<>();

    public Listeners(KnowledgeBase knowledge, Reasoner reasoner) {
        this.knowledge = knowledge;
        this.reasoner = reasoner;
        this.phrases = new Phrases(knowledge.words().phrases());
        this.symptomPhrases = SymptomPhrases.of(knowledge.words().phrases());
        this.synonyms = new Synonyms(knowledge.words().terms().values());
        this.parts = new PartsListener(knowledge, synonyms, phrases.asides());
        this.open = new OpenPhrases(knowledge.words().phrases());
        this.terms = new TermFinder(knowledge.words().terms());
        this.leadIns = knowledge.words().phrases().stream()
                .filter(phrase -> phrase.intent().equals(FOLLOWING))
                .flatMap(phrase -> phrase.patterns().stream())
                .map(Tokens::normal)
                .collect(Collectors.toSet());
        // what another box has is known by its names alone; its gears need not be derived for that
        knowledge
                .layouts()
                .forEach((id, layout) ->
                        namesElsewhere.put(id, new PartNames(new Box(layout, List.of(), List.of()), synonyms)));
    }

    /** The listener for questions about parts. */
    public PartsListener parts() {
        return parts;
    }

    /** Runs of words that lead from one question to the next: {@code what about}. */
    public Set<List<String>> leadIns() {
        return leadIns;
    }

    /** Ids of the layouts, in the order of the packs. */
    public Set<String> layouts() {
        return knowledge.layouts().keySet();
    }

    /** The listener of any layout, for what does not depend on which; empty where none is known. */
    public Optional<Listener> any() {
        return made.values().stream()
                .findFirst()
                .or(() -> layouts().stream().findFirst().map(this::of));
    }

    public Listener of(String layout) {
        return made.computeIfAbsent(layout, id -> make(knowledge.layouts().get(id)));
    }

    private Set<String> openWords() {
        Set<String> all = new HashSet<>(open.words());
        all.addAll(terms.words());
        return all;
    }

    private Listener make(Layout layout) {
        Box box = reasoner.box(layout);
        Map<String, PartNames> others = new LinkedHashMap<>(namesElsewhere);
        others.remove(layout.id());
        Lexicon lexicon = new LexiconWriter(knowledge, synonyms)
                .parts(new PartNames(box, synonyms))
                .gears(box)
                .failures(box)
                .layouts()
                .asides(phrases.asides())
                .elsewhere(others)
                .lexicon();
        BoxWords words =
                new BoxWords(knowledge, box, lexicon, new Belongings(box), new Names(box.layout(), knowledge.words()));
        SymptomLexicon symptoms =
                new SymptomLexicon(knowledge.words(), box, knowledge.layouts().values(), symptomPhrases);
        return new Listener(
                words,
                phrases,
                new SymptomListener(symptoms),
                new OpenListener(words, open, terms, phrases.asides()),
                openWords());
    }
}
