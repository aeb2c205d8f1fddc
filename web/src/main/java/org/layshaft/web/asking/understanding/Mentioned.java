package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.layshaft.web.asking.Given;

/**
 * What some words mention, without what they ask.
 *
 * @param gears names of gears
 * @param parts ids of parts that are named by more than the end of a name
 * @param layouts ids
 * @param terms names of terms of the trade
 * @param neutral whether neutral is named
 * @param given numbers with their units
 * @param bare whether there is nothing else but terms
 * @param withoutTerms whether no term either
 */
public record Mentioned(
        List<String> gears,
        List<String> parts,
        List<String> layouts,
        List<String> terms,
        boolean neutral,
        Given given,
        boolean bare,
        boolean withoutTerms) {

    /** @param aside whether a word changes nothing */
    static Mentioned in(Heard heard, Measures measures, List<OpenFitting.Term> terms, Predicate<String> aside) {
        List<String> gears = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        List<String> layouts = new ArrayList<>();
        boolean[] covered = new boolean[heard.tokens().size()];
        for (Mention mention : heard.mentions()) {
            boolean counts = mention.gear().isPresent()
                    || !mention.parts().isEmpty()
                    || mention.one(Meaning.OfLayout.class).isPresent();
            mention.gear().ifPresent(gears::add);
            if (mention.gear().isEmpty() && mention.isSpecificPart()) {
                parts.addAll(mention.parts());
            }
            mention.all(Meaning.OfLayout.class).map(Meaning.OfLayout::id).forEach(layouts::add);
            if (counts) {
                IntStream.range(mention.from(), mention.to()).forEach(at -> covered[at] = true);
            }
        }
        boolean withoutTerms = isBare(heard, covered, aside);
        terms.forEach(term -> IntStream.range(term.from(), term.to()).forEach(at -> covered[at] = true));
        boolean neutral = heard.tokens().stream().anyMatch(token -> token.text().equals("neutral"));
        return new Mentioned(
                List.copyOf(gears),
                List.copyOf(parts),
                List.copyOf(layouts),
                terms.stream().map(OpenFitting.Term::name).toList(),
                neutral,
                measures.given(),
                isBare(heard, covered, aside),
                withoutTerms);
    }

    private static boolean isBare(Heard heard, boolean[] covered, Predicate<String> aside) {
        return IntStream.range(0, covered.length)
                .allMatch(at -> covered[at]
                        || aside.test(heard.word(at))
                        || heard.word(at).equals("neutral"));
    }
}
