package org.layshaft.engine.road;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.TyreSize.Build;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/** The size codes on sidewalls: width, height and rim, or outside diameter, width and rim. */
final class TyreCode {
    private static final String NUMBER = "(\\d{1,3}(?:\\.\\d{1,2})?)";
    private static final String BUILD = "\\s*[A-QS-Z]?\\s*(R|-|B|D)F?\\s*";
    private static final String REST = "(?:LT|C)?(?:\\s+[A-Z0-9()/+.\\s-]*)?";
    private static final Pattern BY_HEIGHT =
            Pattern.compile("((?:P|LT|ST|T)?\\s*" + NUMBER + "\\s*/\\s*" + NUMBER + BUILD + NUMBER + ")" + REST);
    private static final Pattern BY_DIAMETER =
            Pattern.compile("(" + NUMBER + "\\s*X\\s*" + NUMBER + BUILD + NUMBER + ")" + REST);
    private static final Pattern WITHOUT_HEIGHT = Pattern.compile(NUMBER + BUILD + NUMBER + REST);

    private static final Fraction INCH_MM = Fraction.of(254, 10);
    private static final Fraction TWO = Fraction.of(2);
    private static final Fraction PER_CENT = Fraction.of(1, 100);
    /** Codes of 100 and more for the rim are millimetres. */
    private static final Fraction LARGEST_INCHES = Fraction.of(100);

    private TyreCode() {}

    static TyreSize read(String written) {
        String code = written.strip().toUpperCase(Locale.ROOT).replace('\u00d7', 'X');
        Matcher byHeight = BY_HEIGHT.matcher(code);
        if (byHeight.matches()) {
            return byHeight(byHeight);
        }
        Matcher byDiameter = BY_DIAMETER.matcher(code);
        if (byDiameter.matches()) {
            return byDiameter(byDiameter);
        }
        throw new ImpossibleFactsException(List.of(
                WITHOUT_HEIGHT.matcher(code).matches()
                        ? "The tyre size '%s' does not say how high the sidewall is. Write it with the height in per cent, as in 155/80 R13, or state the rolling circumference in mm."
                                .formatted(written)
                        : "'%s' is not a tyre size that can be read. Write it as in 205/55 R16 or 31x10.50R15, or state the rolling circumference in mm."
                                .formatted(written)));
    }

    private static TyreSize byHeight(Matcher code) {
        Fraction widthMm = number(code.group(2));
        Fraction height = number(code.group(3));
        Fraction rim = number(code.group(5));
        new Objections()
                .unless(within(widthMm, 60, 500), message("width", widthMm, "mm", 60, 500, code))
                .unless(within(height, 20, 100), message("height", height, "per cent of the width", 20, 100, code))
                .unless(
                        isInches(rim) ? within(rim, 8, 30) : within(rim, 190, 600),
                        isInches(rim)
                                ? message("rim", rim, "inches", 8, 30, code)
                                : message("rim", rim, "mm", 190, 600, code))
                .refuse();
        Fraction rimMm = isInches(rim) ? rim.times(INCH_MM) : rim;
        return new TyreSize(
                code.group(1).strip(),
                rimMm.plus(TWO.times(widthMm).times(height).times(PER_CENT)),
                build(code.group(4)));
    }

    private static TyreSize byDiameter(Matcher code) {
        Fraction diameter = number(code.group(2));
        Fraction width = number(code.group(3));
        Fraction rim = number(code.group(5));
        new Objections()
                .unless(within(diameter, 15, 70), message("diameter", diameter, "inches", 15, 70, code))
                .unless(within(width, 2, 25), message("width", width, "inches", 2, 25, code))
                .unless(within(rim, 8, 30), message("rim", rim, "inches", 8, 30, code))
                .unless(
                        rim.compareTo(diameter) < 0,
                        "The tyre of %s is no larger than its rim of %s inches. Look at the code again.",
                        code.group(1),
                        Shown.decimal(rim))
                .refuse();
        return new TyreSize(code.group(1).strip(), diameter.times(INCH_MM), build(code.group(4)));
    }

    private static String message(String what, Fraction value, String unit, int least, int most, Matcher code) {
        return "The %s in the tyre size %s is %s %s. It must be from %d to %d; look at the code again."
                .formatted(what, code.group(1).strip(), Shown.decimal(value), unit, least, most);
    }

    private static boolean within(Fraction value, int least, int most) {
        return value.compareTo(Fraction.of(least)) >= 0 && value.compareTo(Fraction.of(most)) <= 0;
    }

    private static boolean isInches(Fraction rim) {
        return rim.compareTo(LARGEST_INCHES) < 0;
    }

    private static Fraction number(String digits) {
        return Fraction.of(new BigDecimal(digits));
    }

    private static Build build(String letter) {
        return switch (letter) {
            case "R" -> Build.RADIAL;
            case "B" -> Build.BELTED;
            default -> Build.CROSS_PLY;
        };
    }
}
