package org.layshaft.web.asking;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.layshaft.engine.words.Names;

/** The numbers of gears as people write them, and their normal form. */
public final class Ordinals {
    private static final List<String> WORDS = List.of(
            "first",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "eighth",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth");
    private static final Set<String> REVERSE = Set.of("reverse", "rev", "r");
    private static final Map<String, String> NUMBERS = IntStream.range(0, WORDS.size())
            .boxed()
            .collect(Collectors.toUnmodifiableMap(WORDS::get, index -> String.valueOf(index + 1)));
    private static final Map<String, String> SHORT = IntStream.rangeClosed(1, WORDS.size())
            .mapToObj(String::valueOf)
            .collect(Collectors.toUnmodifiableMap(Names::gearName, Function.identity()));
    private static final Map<String, String> SELVES =
            NUMBERS.values().stream().collect(Collectors.toUnmodifiableMap(Function.identity(), Function.identity()));

    private Ordinals() {}

    /** The normal form of a word for a gear, {@code 3} or {@code r}; the word itself where it is none. */
    public static String normal(String word) {
        if (REVERSE.contains(word)) {
            return "r";
        }
        return NUMBERS.getOrDefault(word, SHORT.getOrDefault(word, SELVES.getOrDefault(word, word)));
    }

    /** Whether a normal form is that of a gear. */
    public static boolean isGear(String normal) {
        return normal.equals("r") || SELVES.containsKey(normal);
    }

    /** The words that spelling may mend into a gear's number. */
    public static List<String> words() {
        return WORDS;
    }
}
