package org.layshaft.engine.spline;

import java.util.Locale;

/**
 * A tolerance of tooth thickness or space width, as written after a metric designation: {@code 8f}, {@code 9H}.
 *
 * @param grade how wide it is
 * @param letter where it lies; small for a shaft, capital for a hub
 */
public record Tolerance(int grade, String letter) {

    static Tolerance parse(String text) {
        int letters = text.replaceAll("[0-9]", "").length();
        int split = text.length() - letters;
        return new Tolerance(Integer.parseInt(text.substring(0, split)), text.substring(split));
    }

    /** Below 0 where it gives play, 0 where it begins at the nominal size, above 0 where it takes play away. */
    int tightness() {
        return Integer.signum(letter.toLowerCase(Locale.ROOT).compareTo("h"));
    }

    boolean suits(Member member) {
        String rightCase = member == Member.SHAFT ? letter.toLowerCase(Locale.ROOT) : letter.toUpperCase(Locale.ROOT);
        return letter.equals(rightCase);
    }

    @Override
    public String toString() {
        return grade + letter;
    }
}
