package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;

/** Words of a question that nothing is known of, neighbours together. */
final class UnknownWords {
    private static final int MOST = 5;

    private UnknownWords() {}

    static List<String> in(Rest rest, Phrases phrases) {
        List<String> runs = new ArrayList<>();
        List<Token> all = rest.heard().tokens();
        List<Token> run = new ArrayList<>();
        for (Token token : all) {
            boolean unknown = rest.words().stream().anyMatch(word -> word == token)
                    && !phrases.knows(token.text())
                    && !Heard.LINKS.contains(token.text());
            if (unknown) {
                run.add(token);
            } else if (!run.isEmpty()) {
                runs.add(Lexicon.typed(run));
                run.clear();
            }
        }
        if (!run.isEmpty()) {
            runs.add(Lexicon.typed(run));
        }
        return runs.size() <= MOST ? runs : List.copyOf(runs.subList(0, MOST));
    }
}
