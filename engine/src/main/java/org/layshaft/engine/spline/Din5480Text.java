package org.layshaft.engine.spline;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code DIN 5480 - W 120 x 3 x 38 x 8f}; older drawings put the pressure angle, 30, before the teeth. */
final class Din5480Text {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern DESIGNATION = Pattern.compile("(?:DIN ?5480(?:-\\d)?)?[ -]*([WN])?[ -]*" + NUMBER
            + " ?x ?" + NUMBER + " ?x ?(?:30 ?x ?)?(\\d+)(?: ?x? ?(\\d{1,2}[A-Za-z]{1,2}))?");
    private static final String ADVICE =
            "DIN 5480 writes W for a shaft or N for a hub, then reference diameter x module x teeth: W 120 x 3 x 38 x 8f.";

    private Din5480Text() {}

    static boolean looksLike(String plain) {
        return DESIGNATION.matcher(plain).matches();
    }

    static Spline parse(String text, String plain, Optional<Member> known) {
        Matcher read = DESIGNATION.matcher(plain);
        if (!read.matches()) {
            throw SplineDesignation.unreadable(text, ADVICE);
        }
        Optional<Member> named =
                Optional.ofNullable(read.group(1)).map(letter -> letter.equals("W") ? Member.SHAFT : Member.HUB);
        return new Din5480(
                SplineDesignation.member(text, named, known, ADVICE),
                Double.parseDouble(read.group(2)),
                Double.parseDouble(read.group(3)),
                Integer.parseInt(read.group(4)),
                Optional.ofNullable(read.group(5)).map(Tolerance::parse));
    }
}
