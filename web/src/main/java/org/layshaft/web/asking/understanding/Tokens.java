package org.layshaft.web.asking.understanding;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.layshaft.web.asking.Asking;
import org.layshaft.web.asking.Ordinals;

/**
 * Cuts what somebody typed into words, whatever was typed: one pass over the characters, none looked at twice.
 *
 * <p>Articles are left out, apostrophes closed up, or dropped with the s or ll of a shortened word, {@code &} and {@code +} read as "and".
 */
final class Tokens {
    /** As much as is read of a question, in characters. */
    static final int LIMIT = Asking.LIMIT;

    private static final Set<String> ARTICLES = Set.of("the", "a", "an");

    private static final List<String> SHORTENED = List.of("s", "ll", "ve", "re", "d", "m");

    private final List<Token> words = new ArrayList<>();
    private final StringBuilder word = new StringBuilder();
    private final String text;
    private boolean joined;
    private int clause;

    private Tokens(String text) {
        this.text = text;
    }

    static List<Token> of(String typed) {
        String cut = typed.length() > LIMIT ? typed.substring(0, LIMIT) : typed;
        return new Tokens(Normalizer.normalize(cut, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT)).read();
    }

    /** The normal forms of the words of a name or phrase. */
    static List<String> normal(String phrase) {
        return of(phrase).stream().map(Token::text).toList();
    }

    /** The normal form of one word in lower case. */
    static String normalWord(String word) {
        String number = Ordinals.normal(word);
        return number.equals(word) ? singular(word) : number;
    }

    private static String singular(String word) {
        boolean plural = word.length() > 3
                && word.endsWith("s")
                && !word.endsWith("ss")
                && !word.endsWith("us")
                && !word.endsWith("is");
        return plural ? word.substring(0, word.length() - 1) : word;
    }

    private List<Token> read() {
        for (int at = 0; at < text.length(); at++) {
            char sign = text.charAt(at);
            if (Character.isLetterOrDigit(sign) || isPointOfNumber(at)) {
                word.append(sign);
            } else if (isApostrophe(sign)) {
                at += shortened(at);
            } else {
                part(sign);
            }
        }
        finish();
        return List.copyOf(words);
    }

    private void part(char sign) {
        finish();
        switch (sign) {
            case '-', '/', '\u2010', '\u2011', '\u2012', '\u2013' -> joined = !words.isEmpty();
            case '&', '+' -> {
                word.append("and");
                finish();
            }
            case ',', ';', '.', ':', '?', '!', '(', ')', '\n', '\u2014' -> clause++;
            default -> joined = false;
        }
    }

    private void finish() {
        if (word.length() > 0) {
            String typed = word.toString();
            word.setLength(0);
            if (!ARTICLES.contains(typed)) {
                words.add(new Token(normalWord(typed), typed, joined, clause));
            }
            joined = false;
        }
    }

    private boolean isPointOfNumber(int at) {
        return text.charAt(at) == '.'
                && at > 0
                && at + 1 < text.length()
                && Character.isDigit(text.charAt(at - 1))
                && Character.isDigit(text.charAt(at + 1));
    }

    /** How many letters of a shortened word follow an apostrophe: the s of "what's", the ll of "what'll". */
    private int shortened(int at) {
        for (String ending : SHORTENED) {
            int end = at + 1 + ending.length();
            if (text.startsWith(ending, at + 1)
                    && (end == text.length() || !Character.isLetterOrDigit(text.charAt(end)))) {
                return ending.length();
            }
        }
        return 0;
    }

    private static boolean isApostrophe(char sign) {
        return sign == '\'' || sign == '\u2019' || sign == '\u2018' || sign == '`';
    }
}
