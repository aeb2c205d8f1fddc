package org.layshaft.web.asking;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;

/** Small turns of speech that every sentence needs. */
public final class Saying {
    private Saying() {}

    /** {@code front or rear}. */
    public static String either(List<String> things) {
        int last = things.size() - 1;
        return last < 1
                ? String.join("", things)
                : String.join(", ", things.subList(0, last)) + " or " + things.get(last);
    }

    /** Gears by their names: {@code 1st, 2nd and reverse}. */
    public static String gears(List<String> gears) {
        return Names.joined(gears.stream().map(Names::gearName).toList());
    }

    /** The same with a capital, to begin a sentence. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A number exactly and to three decimals: {@code 67/25 (2.680)}; a whole number alone. */
    public static String number(Fraction number) {
        String exact = number.toString();
        return exact.contains("/") ? exact + " (" + decimals(number) + ")" : exact;
    }

    /** So many turns, none less than zero: {@code 24/47 (0.511) of a turn}, {@code 1 turn}. */
    public static String turns(Fraction number) {
        int size = number.compareTo(Fraction.ONE);
        return number(number) + (size < 0 ? " of a turn" : size == 0 ? " turn" : " turns");
    }

    /** With at most so many decimals, and no zeros at the end: {@code 2400}. */
    public static String plain(Fraction number, int decimals) {
        BigDecimal shown = new BigDecimal(number.numerator())
                .divide(new BigDecimal(number.denominator()), decimals, RoundingMode.HALF_UP);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    /** To three decimals, halves away from zero. */
    public static String decimals(Fraction number) {
        return new BigDecimal(number.numerator())
                .divide(new BigDecimal(number.denominator()), 3, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
