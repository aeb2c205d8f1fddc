package org.layshaft.web.asking.understanding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.web.asking.Given;

/**
 * Finds the numbers with units in what was typed, metric and British-American, and takes them out of the text.
 *
 * @param text what is left, in lower case
 * @param bare a whole number of three to five digits that has no unit
 */
record Measures(String text, Given given, Optional<Fraction> bare) {
    private static final String NUMBER = "(\\d{1,3}(?:,\\d{3})+(?!\\d)|\\d*\\.\\d+|\\d+)";

    /** One lb·ft in N·m, exactly: 0.3048 m times 4.448 221 615 260 5 N. */
    private static final Fraction POUND_FOOT_NM =
            Fraction.of(new BigDecimal("0.3048").multiply(new BigDecimal("4.4482216152605")));

    private static final Fraction INCH_MM = Fraction.of(254, 10);

    /** In the order in which they are looked for; what one has taken no other sees. */
    private enum Kind {
        TYRE("\\b(\\d{3})\\s*[/-]\\s*(\\d{2})\\s*-?z?r?\\s*-?(\\d{2})\\b(?!\\s*-)"),
        PER_1000(
                "\\b(?:per|for|for each|each|every|at|a)\\s+(?:1,?000|thousand)(?:\\s*(?:rpm|revs?|revolutions|turns))?\\b"),
        TORQUE(
                NUMBER
                        + "\\s*(n[·.\\-* ]?m|newton[ -]?met(?:er|re)s?|lbs?[·.\\-/ ]?f(?:ee|oo)?t|f(?:ee|oo)?t[·.\\-/ ]?(?:lbs?|pounds?)|pounds?[ -]f(?:ee|oo)t)\\b"),
        SPEED(
                NUMBER
                        + "\\s*(km[/ ]?h(?:our)?|kmph|kph|k/h|kilomet(?:re|er)s? (?:an|per) hour|mph|miles? (?:an|per) hour|mi/h|m\\.p\\.h)(?![a-z])"),
        KHZ(NUMBER + "\\s*(k) ?hz\\b"),
        HZ(NUMBER + "\\s*(hz|hertz|cycles(?: per second| a second)?|c/s)(?![a-z])"),
        RPM(
                NUMBER
                        + "\\s*(rpm|revs?(?: (?:a|per) minute)?|revolutions(?: (?:a|per) minute)?|r/min|rev/min|turns (?:a|per) minute|min-1)\\b"),
        TEETH("\\b(\\d{1,3})\\s*-?\\s*(?:teeth|tooth|t)\\b"),
        WHEEL_AFTER(
                NUMBER
                        + "\\s*-?\\s*(mm|cm|m|met(?:er|re)s?|inch(?:es)?|in|\")\\.?\\s*-?\\s*(?:tall |high |diameter |rolling )?(?:wheel|tyre|tire)s?\\b"),
        WHEEL_BEFORE("\\b(?:wheel|tyre|tire)s?(?: diameter)?\\s*(?:of|is|are|=)?\\s*" + NUMBER
                + "\\s*(mm|cm|m|met(?:er|re)s?|inch(?:es)?|in|\")(?![a-z0-9])"),
        AXLE_AFTER(
                "(\\d+\\.\\d+)(?:\\s*(?:to 1|: ?1))?\\s*(?:rear axle|axle|diff(?:erential)?|final[ -]?drive|fd|rear[ -]?end|back axle|rear|crown wheel and pinion|gears in the back)\\b(?: ratio)?"),
        AXLE_BEFORE(
                "\\b(?:axle|diff|final[ -]?drive|fd|rear[ -]?end)(?: ratio)?(?: (?:of|is|at|to))?\\s*[:=]?\\s*(\\d+\\.\\d+|(?<=of )\\d+)(?:\\s*(?:to 1|: ?1))?"),
        RATIO_LAST(
                "(?<=\\d\\.\\d{1,3}[ ,/-]{1,2}(?:and )?)(\\d)(?![\\d.:a-z/-]|\\s*(?:to\\b|inch|in\\b|mm|m\\b|rpm|km|mph|hz))"),
        RATIO("(?<![\\d.])(\\d*\\.\\d+)(?:\\s*(?:to 1|to one|: ?1)|(?:st|nd|rd|th)\\b)?"),
        WHOLE_RATIO("\\b(\\d{1,2})\\s*(?:to 1|to one|: ?1)\\b"),
        BARE("\\b(\\d{3,5})\\b(?![/-])");

        private final Pattern pattern;

        Kind(String pattern) {
            this.pattern = Pattern.compile(pattern);
        }
    }

    static Measures in(String typed) {
        String cut = typed.length() > Tokens.LIMIT ? typed.substring(0, Tokens.LIMIT) : typed;
        String text = cut.toLowerCase(Locale.ROOT);
        Map<Kind, List<MatchResult>> found = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            Matcher matcher = kind.pattern.matcher(text);
            List<MatchResult> each = matcher.results().toList();
            if (!each.isEmpty()) {
                found.put(kind, each);
                text = kind == Kind.PER_1000
                        ? matcher.replaceAll(" perthousand ")
                        : matcher.replaceAll(result -> " ".repeat(result.end() - result.start()));
            }
        }
        return new Measures(text, given(found), one(found, Kind.BARE));
    }

    boolean isEmpty() {
        return given.isNothing() && bare.isEmpty();
    }

    private static Given given(Map<Kind, List<MatchResult>> found) {
        Optional<MatchResult> speed = first(found, Kind.SPEED);
        List<Fraction> ratios = new ArrayList<>();
        for (Kind kind : List.of(Kind.RATIO, Kind.WHOLE_RATIO, Kind.RATIO_LAST)) {
            found.getOrDefault(kind, List.of()).forEach(each -> ratios.add(number(each)));
        }
        return new Given(
                one(found, Kind.RPM),
                speed.map(Measures::number),
                speed.map(each -> each.group(2).startsWith("m") ? SpeedUnit.MPH : SpeedUnit.KMH),
                one(found, Kind.KHZ).map(Fraction.of(1000)::times).or(() -> one(found, Kind.HZ)),
                first(found, Kind.TORQUE)
                        .map(each -> each.group(2).startsWith("n")
                                ? number(each)
                                : rounded(number(each).times(POUND_FOOT_NM))),
                one(found, Kind.AXLE_AFTER).or(() -> one(found, Kind.AXLE_BEFORE)),
                ratios,
                first(found, Kind.TYRE).map(each -> "%s/%s R%s".formatted(each.group(1), each.group(2), each.group(3))),
                first(found, Kind.WHEEL_AFTER)
                        .or(() -> first(found, Kind.WHEEL_BEFORE))
                        .map(Measures::mm),
                one(found, Kind.TEETH));
    }

    /** To thousandths: nobody tells a torque in pound-feet more closely. */
    private static Fraction rounded(Fraction number) {
        return Fraction.of(new BigDecimal(number.times(Fraction.of(1000)).numerator())
                .divide(new BigDecimal(number.times(Fraction.of(1000)).denominator()), 0, RoundingMode.HALF_UP)
                .movePointLeft(3));
    }

    private static Fraction mm(MatchResult wheel) {
        String unit = wheel.group(2);
        Fraction size = number(wheel);
        if (unit.startsWith("i") || unit.equals("\"")) {
            return size.times(INCH_MM);
        }
        return unit.equals("mm") ? size : size.times(Fraction.of(unit.equals("cm") ? 10 : 1000));
    }

    private static Optional<Fraction> one(Map<Kind, List<MatchResult>> found, Kind kind) {
        return first(found, kind).map(Measures::number);
    }

    private static Optional<MatchResult> first(Map<Kind, List<MatchResult>> found, Kind kind) {
        return found.getOrDefault(kind, List.of()).stream().findFirst();
    }

    private static Fraction number(MatchResult match) {
        return Fraction.of(new BigDecimal(match.group(1).replace(",", "")));
    }
}
