package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Evidence;
import org.layshaft.web.asking.SymptomsHeard;

/**
 * Hears what somebody notices of one box: {@code growls in neutral, not with the pedal down, quiet in fourth}. Thread-safe.
 */
final class SymptomListener {
    private static final Map<String, List<String>> DRAWN_TOGETHER = Map.of(
            "wont", List.of("will", "not"),
            "doesnt", List.of("does", "not"),
            "isnt", List.of("is", "not"),
            "cant", List.of("can", "not"),
            "cannot", List.of("can", "not"),
            "dont", List.of("do", "not"));

    private final SymptomLexicon lexicon;
    private final Spelling spelling;

    SymptomListener(SymptomLexicon lexicon) {
        this.lexicon = lexicon;
        this.spelling = new Spelling(lexicon.words(), Set.of());
    }

    SymptomsHeard hear(String typed) {
        List<Token> tokens = Tokens.of(typed).stream().flatMap(this::whole).toList();
        Telltale telltale = new Telltale();
        List<String> unknown = new ArrayList<>();
        int clause = 0;
        for (int at = 0; at < tokens.size(); ) {
            Token token = tokens.get(at);
            if (token.clause() != clause) {
                clause = token.clause();
                telltale.comma();
            }
            Optional<Map.Entry<Sign, Integer>> sign = lexicon.at(tokens, at);
            if (sign.isPresent()) {
                telltale.hear(sign.get().getKey());
                at += sign.get().getValue();
                clause = tokens.get(at - 1).clause();
            } else {
                unknown.add(token.typed());
                at++;
            }
        }
        Evidence evidence = telltale.evidence();
        return new SymptomsHeard(evidence, unknown);
    }

    private Stream<Token> whole(Token token) {
        List<String> words = DRAWN_TOGETHER.getOrDefault(token.text(), List.of(spelling.mend(token.text())));
        return words.stream().map(token::spelt);
    }
}
