package org.layshaft.kb.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.json.Document;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.reading.Word.Group;
import org.layshaft.kb.words.Phrase;
import org.layshaft.kb.words.Term;

/** Reads files of words and of phrases. */
public final class WordsReading {
    private WordsReading() {}

    public static List<Located<Word>> words(Document document, Report report) {
        List<Located<Word>> words = new ArrayList<>();
        for (Group group : Group.values()) {
            document.item().get(group.name().toLowerCase(Locale.ROOT)).entries().forEach((key, item) -> {
                Word word = new Word(group, key, term(group, key, item));
                words.add(new Located<>(word, document.file(), item.pointer(), report));
            });
        }
        return words;
    }

    /** Every mention of a notice as what another is a sort of. */
    public static List<Located<String>> sorts(Document document, Report report) {
        return document.item().get("notices").entries().values().stream()
                .map(notice -> notice.get("sort"))
                .flatMap(sort ->
                        sort.text().stream().map(id -> new Located<>(id, document.file(), sort.pointer(), report)))
                .toList();
    }

    public static List<Phrase> phrases(Document document, Report report) {
        Report notation = Report.on(document);
        document.item()
                .get("phrases")
                .items()
                .forEach(phrase -> phrase.get("patterns")
                        .items()
                        .forEach(pattern -> PatternNotation.check(
                                pattern, phrase.get("intent").text().orElse(""), notation)));
        report.addWhereUnspoilt(notation);
        return document.item().get("phrases").items().stream()
                .filter(item -> item.get("intent").text().isPresent())
                .map(item -> new Phrase(
                        item.get("intent").text().orElseThrow(),
                        item.get("name").text().orElse(""),
                        item.get("patterns").texts(),
                        item.get("examples").texts(),
                        item.get("says").texts(),
                        item.get("shows").texts()))
                .toList();
    }

    private static Term term(Group group, String key, Item item) {
        String byDefault = group == Group.TERMS ? key : key.replace('-', ' ');
        String name = item.get("name").text().orElse(byDefault);
        String says = item.get("says").text().orElse(group == Group.NOTICES ? "it " + name : "");
        String perhaps = says.isEmpty() ? "" : "perhaps " + says;
        return new Term(
                name,
                item.get("also").texts(),
                item.get("means").text().orElse(""),
                says,
                item.get("may").text().orElse(perhaps),
                item.get("sort").text(),
                depth(item.get("seen_at")));
    }

    private static Depth depth(Item item) {
        return item.text()
                .flatMap(text -> Arrays.stream(Depth.values())
                        .filter(depth -> depth.word().equals(text))
                        .findFirst())
                .orElse(Depth.OUTSIDE);
    }
}
