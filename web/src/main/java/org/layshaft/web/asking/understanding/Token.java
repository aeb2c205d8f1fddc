package org.layshaft.web.asking.understanding;

/**
 * One word of what was typed.
 *
 * @param text its normal form: singular, numbers of gears as {@code 3} and {@code r}
 * @param typed as it was typed, in lower case
 * @param joined whether a hyphen or stroke joins it to the word before: the {@code 4} of {@code 3-4}
 * @param clause which stretch between commas, stops and the like it stands in
 */
record Token(String text, String typed, boolean joined, int clause) {
    Token spelt(String other) {
        return new Token(other, typed, joined, clause);
    }
}
