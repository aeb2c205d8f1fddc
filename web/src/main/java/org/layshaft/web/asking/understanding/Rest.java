package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.layshaft.kb.layout.PartKind;

/**
 * What is left of a question once its failures are taken out.
 *
 * @param words the words that stand for nothing, to be held against patterns
 * @param gears mentions that can stand for gears, in order
 * @param parts mentions that can stand only for parts, in order
 * @param faults whether failures were taken out
 */
record Rest(Heard heard, List<Token> words, List<Mention> gears, List<Mention> parts, boolean faults) {

    /**
     * @param used indices of the words that failures take up
     * @param openers words that name a part only where no question is made of them: {@code gear}, {@code turn}
     */
    static Rest of(Heard heard, FaultsHeard faults, Set<String> openers) {
        List<Token> words = new ArrayList<>();
        List<Mention> gears = new ArrayList<>();
        List<Mention> parts = new ArrayList<>();
        int at = 0;
        while (at < heard.tokens().size()) {
            Mention mention = heard.startingAt(at).orElse(null);
            if (faults.used().contains(at)) {
                at++;
            } else if (mention == null) {
                words.add(heard.tokens().get(at++));
            } else {
                boolean layout = mention.one(Meaning.OfLayout.class).isPresent();
                boolean aside = mention.one(Meaning.Aside.class).isPresent();
                boolean gear = mention.gear().isPresent();
                boolean nothing = mention.parts().isEmpty() || saysLittle(mention, heard, openers);
                if (gear) {
                    gears.add(mention);
                } else if (!nothing) {
                    parts.add(mention);
                } else if (!layout && !aside) {
                    words.addAll(heard.tokens().subList(at, mention.to()));
                }
                at = mention.to();
            }
        }
        return new Rest(heard, words, gears, parts, !faults.each().isEmpty());
    }

    String wordBefore(Mention mention) {
        return heard.word(mention.from() - 1);
    }

    private static boolean saysLittle(Mention mention, Heard heard, Set<String> openers) {
        boolean drives = mention.parts().stream()
                .allMatch(part -> heard.words().part(part).kind() == PartKind.ENGINE);
        return (mention.isGeneral() || drives)
                && heard.tokens().subList(mention.from(), mention.to()).stream()
                        .allMatch(token -> openers.contains(token.text()));
    }
}
