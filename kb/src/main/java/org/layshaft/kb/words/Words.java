package org.layshaft.kb.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All words that are known.
 *
 * @param terms by name, for parts and notions: {@code countershaft}, also called layshaft
 * @param notices by id, for what a person notices: {@code jumps-out}
 * @param conditions by id, for when it is noticed: {@code pulling}
 * @param told by id, for what can be told of a fault: {@code side}, {@code front}, {@code badly}
 * @param phrases the shapes of questions
 */
public record Words(
        Map<String, Term> terms,
        Map<String, Term> notices,
        Map<String, Term> conditions,
        Map<String, Term> told,
        List<Phrase> phrases) {
    public Words {
        terms = kept(terms);
        notices = kept(notices);
        conditions = kept(conditions);
        told = kept(told);
        phrases = List.copyOf(phrases);
    }

    private static Map<String, Term> kept(Map<String, Term> terms) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(terms));
    }
}
