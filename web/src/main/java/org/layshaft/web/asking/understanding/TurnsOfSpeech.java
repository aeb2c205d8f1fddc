package org.layshaft.web.asking.understanding;

import java.util.regex.Pattern;

/** Puts what is said around a thing behind it: {@code left the pin out} becomes {@code the pin left out}. */
final class TurnsOfSpeech {
    private static final Pattern LEFT_OUT = Pattern.compile(
            "\\b(?:leave|leaves|left|leaving|miss|missed|missing) ((?:\\S+ ){1,5}?)(out|off)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern FORGOTTEN = Pattern.compile(
            "\\b(?:forgot|forget|forgotten|forgets|omitted)(?: to (?:put|fit|refit|replace|install|put back|reinstall))?(?: back)? ((?:the |my |an? )?(?:[\\w-]+ ){0,3}?[\\w-]+)(?: back(?: in)?| in)?(?=[,.?!]|$| and | which | what )",
            Pattern.CASE_INSENSITIVE);

    private TurnsOfSpeech() {}

    static String plain(String typed) {
        String cut = typed.length() > Tokens.LIMIT ? typed.substring(0, Tokens.LIMIT) : typed;
        String plain = LEFT_OUT.matcher(cut).replaceAll("$1left out");
        return FORGOTTEN.matcher(plain).replaceAll("$1 left out");
    }
}
