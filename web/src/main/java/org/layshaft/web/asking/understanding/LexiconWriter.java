package org.layshaft.web.asking.understanding;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Direction;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.words.Term;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.asking.Ordinals;

/** Writes down every word that has a meaning for one box: its own first, those of other boxes last. */
final class LexiconWriter {
    /** The name under which packs list words that may stand for a way of failing of many kinds of part. */
    private static final String FAILING = "failing";

    private final KnowledgeBase knowledge;
    private final Synonyms synonyms;
    private final Lexicon lexicon = new Lexicon();

    LexiconWriter(KnowledgeBase knowledge, Synonyms synonyms) {
        this.knowledge = knowledge;
        this.synonyms = synonyms;
    }

    Lexicon lexicon() {
        return lexicon;
    }

    LexiconWriter parts(PartNames names) {
        names.exact().forEach((words, ids) -> {
            Meaning.Parts meant = new Meaning.Parts(List.copyOf(ids), false);
            lexicon.add(words, meant);
            if (words.size() == 2 && words.get(1).equals("gear") && Ordinals.isGear(words.get(0))) {
                lexicon.add(List.of("gear", words.get(0)), meant);
            }
        });
        names.general().forEach((words, ids) -> addUnlessKnown(words, new Meaning.Parts(List.copyOf(ids), true)));
        return this;
    }

    LexiconWriter gears(Box box) {
        List<String> names = box.gears().stream().map(Box.DerivedGear::name).toList();
        names.forEach(name -> addGear(name, new Meaning.OfGear(name)));
        Stream.concat(IntStream.rangeClosed(1, 12).mapToObj(String::valueOf), Stream.of("R"))
                .filter(name -> !names.contains(name))
                .forEach(name -> addGear(name, new Meaning.NoSuchGear(name)));
        List<String> forward = box.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .map(Box.DerivedGear::name)
                .toList();
        if (!forward.isEmpty()) {
            addNotion("bottom gear", forward.get(0));
            addNotion("top gear", forward.get(forward.size() - 1));
        }
        return this;
    }

    /** Ways of failing, what can be told of them, and our own words for what is not known of them. */
    LexiconWriter failures(Box box) {
        Collection<FailureMode> modes = knowledge.failureModes();
        modes.stream().flatMap(mode -> mode.words().stream()).distinct().forEach(word -> {
            List<FailureMode> same =
                    modes.stream().filter(mode -> mode.words().contains(word)).toList();
            lexicon.add(Tokens.normal(word), new Meaning.Modes(same));
        });
        knowledge.words().phrases().stream()
                .filter(phrase -> phrase.intent().equals(FAILING))
                .forEach(phrase -> {
                    List<FailureMode> same = modes.stream()
                            .filter(mode -> mode.name().equals(phrase.name()))
                            .toList();
                    phrase.patterns().forEach(word -> addUnlessKnown(Tokens.normal(word), new Meaning.Modes(same)));
                });
        Set<String> values = modes.stream()
                .flatMap(mode -> mode.unlessTold().values().stream().flatMap(List::stream))
                .collect(Collectors.toSet());
        values.forEach(value -> Optional.ofNullable(knowledge.words().told().get(value))
                .ifPresent(term -> forms(term).forEach(form -> lexicon.add(form, new Meaning.Told(value)))));
        FaultNaming faultWords = new FaultNaming(knowledge, box);
        modes.forEach(mode -> faultWords
                .everythingUnknown(mode)
                .forEach(words -> lexicon.add(Tokens.normal(words), new Meaning.Aside())));
        return this;
    }

    LexiconWriter layouts() {
        knowledge
                .layouts()
                .values()
                .forEach(layout -> Stream.of(layout.name(), layout.id())
                        .forEach(name -> lexicon.add(Tokens.normal(name), new Meaning.OfLayout(layout.id()))));
        return this;
    }

    /** Runs of words that change nothing; single ones are left to the patterns. */
    LexiconWriter asides(Collection<List<String>> asides) {
        asides.stream().filter(words -> words.size() > 1).forEach(words -> addUnlessKnown(words, new Meaning.Aside()));
        return this;
    }

    LexiconWriter elsewhere(Map<String, PartNames> others) {
        Map<List<String>, Meaning.Elsewhere> found = new LinkedHashMap<>();
        others.forEach((layout, names) -> names.severalWordsOrExact().forEach((words, ids) -> {
            Part part = knowledge
                    .layouts()
                    .get(layout)
                    .the(Part.class, ids.iterator().next());
            // a word out of the middle of a name, low from low gear, says too little by itself
            if (words.size() == 1 && !Tokens.normal(part.name()).equals(words)) {
                return;
            }
            found.merge(words, new Meaning.Elsewhere(part.kind(), List.of(layout)), Meaning.Elsewhere::andIn);
        }));
        found.forEach(this::addUnlessKnown);
        return this;
    }

    private void addGear(String gear, Meaning meaning) {
        List<String> name = Tokens.normal(gear);
        lexicon.add(name, meaning);
        lexicon.add(Stream.concat(name.stream(), Stream.of("gear")).toList(), meaning);
        lexicon.add(Stream.concat(Stream.of("gear"), name.stream()).toList(), meaning);
    }

    private void addNotion(String notion, String gear) {
        synonyms.formsOf(notion).forEach(form -> lexicon.add(form, new Meaning.OfGear(gear)));
    }

    private void addUnlessKnown(List<String> words, Meaning meaning) {
        if (!lexicon.has(words)) {
            lexicon.add(words, meaning);
        }
    }

    private static List<List<String>> forms(Term term) {
        return Stream.concat(Stream.of(term.name()), term.also().stream())
                .map(Tokens::normal)
                .toList();
    }
}
