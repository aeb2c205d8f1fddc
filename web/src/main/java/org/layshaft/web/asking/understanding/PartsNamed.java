package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/** Sets, boxes and places by the words that somebody has for them. Thread-safe. */
final class PartsNamed {
    private static final Pattern LIKE_A_NUMBER = Pattern.compile("(?:[a-z]{1,4} ?)?\\d{3,}(?: ?[a-z0-9]{1,3})?");
    private static final Pattern TYRE = Pattern.compile("(\\d{3}) (\\d{2}) ?(z?r) ?(\\d{2})");

    /** What one says for the whole, without its telling anything of it. */
    private static final Set<String> GENERAL = Set.of("set", "kit", "number", "part", "of", "and", "with");

    /** What one says after a number, whatever the thing is called. */
    private static final Set<String> CALLED = Set.of("set", "kit", "pair", "part", "gear");

    private final KnowledgeBase knowledge;
    private final Synonyms synonyms;
    private final Map<String, String> byNumber = new LinkedHashMap<>();
    private final Map<String, Set<String>> wordsOfSets = new LinkedHashMap<>();
    private final Map<String, Set<String>> wordsOfParts = new LinkedHashMap<>();
    private final Map<String, String> boxes = new LinkedHashMap<>();

    PartsNamed(KnowledgeBase knowledge, Synonyms synonyms) {
        this.knowledge = knowledge;
        this.synonyms = synonyms;
        knowledge.catalogue().sets().values().forEach(set -> add(set, wordsOfSets));
        knowledge.catalogue().parts().values().stream().map(PartSet::of).forEach(part -> add(part, wordsOfParts));
        knowledge
                .layouts()
                .values()
                .forEach(layout -> Stream.of(layout.name(), layout.id())
                        .forEach(name -> boxes.putIfAbsent(normal(name), layout.id())));
        knowledge.catalogue().builds().values().stream()
                .filter(build -> knowledge.layouts().containsKey(build.layout()))
                .forEach(this::add);
    }

    private void add(PartSet set, Map<String, Set<String>> words) {
        byNumber.put(closed(normal(set.number())), set.number());
        words.put(set.number(), new HashSet<>(Tokens.normal(set.name())));
    }

    /** {@code curlew late} as well as {@code late curlew}. */
    private void add(Build build) {
        List<String> id = new ArrayList<>(Tokens.normal(build.id()));
        boxes.putIfAbsent(normal(build.name()), build.id());
        boxes.putIfAbsent(String.join(" ", id), build.id());
        if (id.size() > 1) {
            id.add(id.remove(0));
            boxes.putIfAbsent(String.join(" ", id), build.id());
        }
    }

    /** Every name of a box, in normal form with blanks between. */
    Set<String> boxNames() {
        return boxes.keySet();
    }

    /** Id of the layout or build of this name. */
    String box(String name) {
        return boxes.get(name);
    }

    /** Id of the layout that a layout or build is of. */
    String layoutOf(String box) {
        Build build = knowledge.catalogue().builds().get(box);
        return build == null ? box : build.layout();
    }

    /** Whether it is known which parts stand in boxes of this layout. */
    boolean isBuilt(String layout) {
        return knowledge.catalogue().builds().values().stream()
                .anyMatch(build -> build.layout().equals(layout));
    }

    /** Whether somebody means a number, known or not. */
    static boolean isLikeANumber(String words) {
        return LIKE_A_NUMBER.matcher(words).matches();
    }

    /**
     * Numbers of the sets that these words can mean, or else of the parts.
     *
     * @param layout the one asked about: its own go before those that are called after another
     */
    Set<String> sets(String words, String layout) {
        Optional<String> number = numbered(List.of(words.split(" ")));
        if (number.isPresent()) {
            return Set.of(number.get());
        }
        List<String> telling = Stream.of(words.split(" "))
                .filter(word -> !GENERAL.contains(word))
                .toList();
        if (telling.isEmpty() || isLikeANumber(words)) {
            return Set.of();
        }
        Set<List<String>> ways = synonyms.of(telling);
        String own = normal(knowledge.layouts().get(layout).name());
        Set<String> sets = having(ways, wordsOfSets, own);
        return sets.isEmpty() ? having(ways, wordsOfParts, own) : sets;
    }

    /** The number that they begin with, if what follows is its name. */
    private Optional<String> numbered(List<String> words) {
        for (int length = words.size(); length > 0; length--) {
            String number = byNumber.get(String.join("", words.subList(0, length)));
            if (number != null) {
                List<String> after = words.subList(length, words.size()).stream()
                        .filter(word -> !CALLED.contains(word))
                        .toList();
                Set<String> name = wordsOfSets.getOrDefault(number, wordsOfParts.getOrDefault(number, Set.of()));
                return Optional.of(number).filter(any -> name.containsAll(after));
            }
        }
        return Optional.empty();
    }

    private static Set<String> having(Set<List<String>> ways, Map<String, Set<String>> words, String own) {
        Set<String> having = new LinkedHashSet<>();
        words.forEach((number, known) -> {
            if (ways.stream().anyMatch(known::containsAll)) {
                having.add(number);
            }
        });
        Set<String> ofOwn = new LinkedHashSet<>(having);
        ofOwn.removeIf(number -> !words.get(number).contains(own));
        return ofOwn.isEmpty() ? having : ofOwn;
    }

    /** The numbers nearest to these words: those with the same beginning, the longest first. */
    List<String> near(String words) {
        String wanted = closed(words);
        for (int length = wanted.length() - 1; length > 2; length--) {
            String start = wanted.substring(0, length);
            List<String> near = byNumber.entrySet().stream()
                    .filter(entry -> entry.getKey().startsWith(start))
                    .map(Map.Entry::getValue)
                    .limit(4)
                    .toList();
            if (!near.isEmpty()) {
                return near;
            }
        }
        return List.of();
    }

    /** Id of the place of this name in a layout: {@code 3} is where third gear stands. */
    Optional<String> place(String layout, String words) {
        Layout of = knowledge.layouts().get(layout);
        return of.parts().values().stream()
                .filter(part -> Stream.of(normal(part.id()), normal(part.name()))
                        .anyMatch(name -> name.equals(words) || name.equals(words + " gear")))
                .map(Part::id)
                .findFirst();
    }

    /** As on a sidewall: {@code 195/65 R15}. */
    static String tyre(String words) {
        Matcher size = TYRE.matcher(words);
        return size.matches()
                ? "%s/%s %s%s"
                        .formatted(size.group(1), size.group(2), size.group(3).toUpperCase(Locale.ROOT), size.group(4))
                : words;
    }

    private static String normal(String name) {
        return String.join(" ", Tokens.normal(name));
    }

    private static String closed(String words) {
        return words.replace(" ", "");
    }
}
