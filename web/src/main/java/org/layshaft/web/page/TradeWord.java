package org.layshaft.web.page;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A thing that the trade calls otherwise on either side of the ocean.
 *
 * @param also other words for it
 */
record TradeWord(String british, String american, List<String> also) {
    private static final String FILE = "/org/layshaft/web/words/dialects.json";
    private static final List<TradeWord> ALL = read();
    /** The longest first, so that none is taken for a part of another. */
    private static final Pattern ANY = Pattern.compile("(?<![\\w-])("
            + ALL.stream()
                    .flatMap(TradeWord::every)
                    .distinct()
                    .sorted(Comparator.comparing(String::length).reversed())
                    .map(Pattern::quote)
                    .collect(Collectors.joining("|"))
            + ")(?![\\w-])");

    TradeWord {
        also = also == null ? List.of() : List.copyOf(also);
    }

    static String british(String name) {
        return said(name, TradeWord::british);
    }

    static String american(String name) {
        return said(name, TradeWord::american);
    }

    private static String said(String name, Function<TradeWord, String> in) {
        return ANY.matcher(name)
                .replaceAll(found -> Matcher.quoteReplacement(ALL.stream()
                        .filter(word -> word.every().anyMatch(found.group()::equals))
                        .findFirst()
                        .map(in)
                        .orElseThrow()));
    }

    private Stream<String> every() {
        return Stream.concat(Stream.of(british, american), also.stream());
    }

    private static List<TradeWord> read() {
        try (InputStream in = TradeWord.class.getResourceAsStream(FILE)) {
            return new JsonMapper().readValue(in, new TypeReference<List<TradeWord>>() {});
        } catch (IOException e) {
            throw new UncheckedIOException("The file " + FILE + " cannot be read.", e);
        }
    }
}
