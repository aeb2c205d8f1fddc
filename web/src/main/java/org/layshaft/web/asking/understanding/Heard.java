package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A question as heard for one box: its words, and what they may stand for.
 *
 * @param mentions in order, no two overlapping
 */
record Heard(BoxWords words, List<Token> tokens, List<Mention> mentions) {
    /** Little words that tie what is said of a failure to it. */
    static final Set<String> LINKS = Set.of(
            "in", "into", "at", "to", "toward", "on", "onto", "of", "for", "under", "left", "stuck", "it", "was", "is",
            "side", "behind", "after", "before", "between", "ahead", "past", "from", "with", "while", "when", "its");

    static Heard of(BoxWords words, List<Token> tokens) {
        return new Heard(words, tokens, words.lexicon().mentions(tokens));
    }

    String word(int at) {
        return at >= 0 && at < tokens.size() ? tokens.get(at).text() : "";
    }

    boolean isLink(int at) {
        return LINKS.contains(word(at));
    }

    Optional<Mention> startingAt(int at) {
        return mentions.stream().filter(mention -> mention.from() == at).findFirst();
    }

    Optional<Mention> endingAt(int at) {
        return mentions.stream().filter(mention -> mention.to() == at).findFirst();
    }

    /** How far apart two mentions are in the sentence: words between, and more for a comma or another "and". */
    int distance(Mention one, Mention other) {
        int from = Math.min(one.to(), other.to());
        int to = Math.max(one.from(), other.from());
        int ands = (int)
                IntStream.range(from, to).filter(at -> word(at).equals("and")).count();
        int clauses = Math.abs(
                tokens.get(one.from()).clause() - tokens.get(other.from()).clause());
        return one.gapTo(other) + 3 * ands + 3 * clauses;
    }
}
