package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedUnit;

/** What figures are shown in. What is typed, and JSON, stays in mm, N·m and km/h. */
public enum Units {
    METRIC,
    /** Inches, pound-feet and miles an hour, by their definitions: 25.4 mm, 0.45359237 kg at 9.80665 m/s² on 0.3048 m, 1609.344 m. */
    INCH;

    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
    private static final Fraction NM_PER_POUND_FOOT = Fraction.of(new BigDecimal("0.45359237"))
            .times(Fraction.of(new BigDecimal("9.80665")))
            .times(Fraction.of(new BigDecimal("0.3048")));
    private static final String NUMBER = "-?\\d+(?:\\.\\d+)?";

    /** A module is in mm by what the word means. */
    private static final Pattern LENGTHS = Pattern.compile(
            "(?<!module )(?<!module: )(?<![\\d.])(?:(" + NUMBER + ")( to | and ))?(" + NUMBER + ")(\\s+)mm\\b");

    private static final Pattern SPEED = Pattern.compile("(?<![\\d.])(" + NUMBER + ")(\\s+)km/h");
    private static final int DECIMALS = 4;

    /** Throws {@link BadInputException} for what is neither {@code mm} nor {@code inch}. */
    public static Units of(Optional<String> written) {
        if (written.isEmpty() || written.get().equals("mm")) {
            return METRIC;
        }
        if (written.get().equals("inch")) {
            return INCH;
        }
        throw new BadInputException(
                UNKNOWN,
                "There are no units \"%s\". There are: mm, inch.".formatted(written.get()),
                List.of("mm", "inch"));
    }

    /** Sentences in which every length in mm and every speed in km/h is told in these units. */
    public String words(String text) {
        if (this == METRIC) {
            return text;
        }
        String inches = LENGTHS.matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(
                        lengths(Optional.ofNullable(found.group(1)), found.group(2), found.group(3), found.group(4))));
        return SPEED.matcher(inches)
                .replaceAll(found -> Matcher.quoteReplacement(
                        speed(Fraction.of(new BigDecimal(found.group(1))), 1) + found.group(2) + SpeedUnit.MPH.sign()));
    }

    private static String lengths(Optional<String> from, String between, String to, String gap) {
        return from.map(low -> inches(low) + between).orElse("") + inches(to) + gap + "in";
    }

    private static String inches(String mm) {
        return new BigDecimal(mm)
                .divide(MM_PER_INCH, DECIMALS, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** With the unit: {@code 96 mm}, {@code 3.7795 in}. */
    public String length(String mm) {
        return words(mm + " mm");
    }

    String speed(Fraction kmh, int decimals) {
        return Decimals.rounded(this == INCH ? SpeedUnit.MPH.fromKmh(kmh) : kmh, decimals)
                .toPlainString();
    }

    String speedSign() {
        return this == INCH ? SpeedUnit.MPH.sign() : SpeedUnit.KMH.sign();
    }

    String torque(Fraction nm) {
        return Decimals.rounded(this == INCH ? nm.over(NM_PER_POUND_FOOT) : nm, 0)
                .toPlainString();
    }

    String torqueSign() {
        return this == INCH ? "lb·ft" : "N·m";
    }
}
