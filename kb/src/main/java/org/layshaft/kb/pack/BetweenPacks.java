package org.layshaft.kb.pack;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.reading.Located;
import org.layshaft.kb.reading.Word;
import org.layshaft.kb.reading.Word.Group;

/** What only shows when packs stand side by side. */
final class BetweenPacks {
    private BetweenPacks() {}

    static void check(List<ReadPack> packs) {
        tellRepeated("pack", packs.stream().flatMap(pack -> pack.manifest().stream()), Pack::id);
        tellRepeated(
                "layout",
                packs.stream().flatMap(pack -> pack.layouts().stream()),
                layout -> layout.id().id());
        tellRepeated("failure mode", packs.stream().flatMap(pack -> pack.modes().stream()), FailureMode::id);
        tellWithoutMeaning(packs);
        BetweenCatalogues.check(packs);
        packs.forEach(pack -> tellUnknownNotices(pack, packs));
    }

    private static <T> void tellRepeated(String kind, Stream<Located<T>> all, Function<T, String> idOf) {
        Map<String, Located<T>> first = new HashMap<>();
        all.forEach(located -> {
            String id = idOf.apply(located.value());
            Located<T> before = first.putIfAbsent(id, located);
            if (before != null && !id.isEmpty()) {
                located.broken(
                        "There is another %s '%s' already: %s.".formatted(kind, id, before.place()),
                        id,
                        "Name this one otherwise, or take one of the two out: %s or %s."
                                .formatted(before.file(), located.file()));
            }
        });
    }

    private static void tellWithoutMeaning(List<ReadPack> packs) {
        List<Located<Word>> words =
                packs.stream().flatMap(pack -> pack.words().stream()).toList();
        Set<String> meant = words.stream()
                .filter(word -> !word.value().term().means().isEmpty())
                .map(word -> key(word.value()))
                .collect(Collectors.toSet());
        words.stream()
                .filter(word -> !meant.contains(key(word.value())))
                .forEach(word -> word.broken(
                        "No file says what '%s' means.".formatted(word.value().key()),
                        word.value().key(),
                        "Add 'means' with a sentence, here or in another file that names the word."));
    }

    private static String key(Word word) {
        return word.group() + "/" + word.key();
    }

    private static void tellUnknownNotices(ReadPack pack, List<ReadPack> packs) {
        List<Word> known = packs.stream()
                .filter(other -> other == pack || other.isSound())
                .flatMap(other -> other.words().stream())
                .map(Located::value)
                .filter(word -> word.group() == Group.NOTICES)
                .toList();
        Collection<String> ids = known.stream().map(Word::key).collect(Collectors.toCollection(TreeSet::new));
        Stream.of(pack.notices(), pack.sorts())
                .flatMap(List::stream)
                .filter(notice -> !ids.contains(notice.value()))
                .forEach(notice -> notice.broken(
                        "No words say what the notice '%s' is.".formatted(notice.value()),
                        notice.value(),
                        "Add it to the 'notices' of a words file. " + Nearest.advice(notice.value(), ids)));
        tellSortsOfSorts(pack, known);
    }

    /** Sorts go one deep, so that none can go round in a ring. */
    private static void tellSortsOfSorts(ReadPack pack, List<Word> known) {
        Map<String, String> sorts = new HashMap<>();
        known.forEach(word -> word.term().sort().ifPresent(sort -> sorts.putIfAbsent(word.key(), sort)));
        pack.sorts().stream()
                .filter(sort -> sorts.containsKey(sort.value()))
                .forEach(sort -> sort.broken(
                        "'%s' is itself a sort of '%s'.".formatted(sort.value(), sorts.get(sort.value())),
                        sort.value(),
                        "Name '%s' here: sorts go one deep.".formatted(sorts.get(sort.value()))));
    }
}
