package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.words.Phrase;
import org.layshaft.web.asking.Intent;

/** Every way to put a question at large that the packs know, and what is beyond reach. Thread-safe. */
final class OpenPhrases {
    /** The name under which packs list what is beyond reach. */
    static final String DECLINED = "declined";

    private static final String GROUP = "group";

    private final List<Way> ways = new ArrayList<>();
    private final Set<String> words = new HashSet<>();

    /** One way to put a question, and what it asks. */
    record Way(Phrase phrase, OpenPattern pattern) {
        boolean isDeclined() {
            return phrase.intent().equals(DECLINED);
        }
    }

    OpenPhrases(List<Phrase> phrases) {
        Map<String, List<String>> groups = new HashMap<>();
        phrases.stream()
                .filter(phrase -> phrase.intent().equals(GROUP))
                .forEach(phrase -> groups.computeIfAbsent(phrase.name(), none -> new ArrayList<>())
                        .addAll(phrase.patterns()));
        phrases.stream()
                .filter(phrase -> phrase.intent().equals(DECLINED)
                        || Intent.of(phrase.intent()).filter(Intent::isAtLarge).isPresent())
                .forEach(phrase -> phrase.patterns()
                        .forEach(written -> ways.add(new Way(phrase, OpenPattern.of(written, groups)))));
        ways.forEach(way -> words.addAll(way.pattern().words()));
    }

    List<Way> ways() {
        return ways;
    }

    Set<String> words() {
        return words;
    }
}
