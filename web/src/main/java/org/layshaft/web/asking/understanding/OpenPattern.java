package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One way to put a question at large. It is written like the others, but here every piece that is not in round brackets
 * has to be there, in any order; words of one way stand together; {@code <why>} stands for every pattern of the group of
 * that name.
 */
record OpenPattern(List<Element> elements) {
    private static final Pattern PIECE = Pattern.compile("\\([^)]*\\)|\\[[^\\]]*\\]|\\S+");
    private static final Pattern GROUP = Pattern.compile("<[a-z0-9-]+>");

    /** What a slot takes. */
    enum Slot {
        GEAR,
        PART,
        BOX,
        TERM,
        SIDE,
        RPM,
        SPEED,
        HZ,
        TEETH,
        TORQUE,
        AXLE,
        TYRE,
        RATIO
    }

    /** A piece of a pattern. */
    sealed interface Element {
        boolean optional();
    }

    /** One of several runs of words, the longest first. */
    record Choice(List<List<String>> ways, boolean optional) implements Element {}

    /** A slot. */
    record Wanted(Slot slot, boolean optional) implements Element {}

    /** @param groups what names in angle brackets stand for */
    static OpenPattern of(String written, Map<String, List<String>> groups) {
        List<Element> elements = new ArrayList<>();
        PIECE.matcher(written).results().forEach(piece -> {
            String text = piece.group();
            boolean optional = text.startsWith("(");
            String inner = optional || text.startsWith("[") ? text.substring(1, text.length() - 1) : text;
            if (inner.startsWith("{")) {
                String slot = inner.substring(1, inner.length() - 1).toUpperCase(Locale.ROOT);
                elements.add(new Wanted(Slot.valueOf(slot), optional));
            } else {
                List<List<String>> ways = ways(inner, groups)
                        .map(Tokens::normal)
                        .filter(way -> !way.isEmpty())
                        .distinct()
                        .sorted((one, other) -> other.size() - one.size())
                        .toList();
                if (!ways.isEmpty()) {
                    elements.add(new Choice(ways, optional));
                }
            }
        });
        // what must be there takes its words before what may be there
        elements.sort((one, other) -> Boolean.compare(one.optional(), other.optional()));
        return new OpenPattern(List.copyOf(elements));
    }

    private static Stream<String> ways(String inner, Map<String, List<String>> groups) {
        return Arrays.stream(inner.split("\\|")).flatMap(way -> {
            String name = way.strip();
            return GROUP.matcher(name).matches()
                    ? groups.getOrDefault(name.substring(1, name.length() - 1), List.of()).stream()
                            .flatMap(each -> ways(each, groups))
                    : Stream.of(way);
        });
    }

    /** Every word that occurs. */
    Set<String> words() {
        Set<String> words = new HashSet<>();
        elements.stream()
                .filter(Choice.class::isInstance)
                .flatMap(element -> ((Choice) element).ways().stream())
                .forEach(words::addAll);
        return words;
    }
}
