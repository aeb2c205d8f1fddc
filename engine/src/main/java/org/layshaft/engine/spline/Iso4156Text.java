package org.layshaft.engine.spline;

import static org.layshaft.engine.stated.Shown.decimal;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.stated.ImpossibleFactsException;

/** {@code EXT 24z x 2.5m x 30R x 5f ISO 4156}. */
final class Iso4156Text {
    private static final Pattern DESIGNATION = Pattern.compile(
            "(?:.*?)(\\d+) ?z ?x ?(\\d+(?:\\.\\d+)?) ?m ?x ?(\\d+(?:\\.\\d+)?) ?([PR])?(?: ?x ?(\\d[A-Za-z]))?(?: .*)?");
    private static final String ADVICE =
            "ISO 4156 writes EXT for a shaft or INT for a hub, then teeth x module x pressure angle, P for a flat or R for a fillet root: EXT 24z x 2.5m x 30R x 5f.";

    private Iso4156Text() {}

    static boolean looksLike(String plain) {
        return DESIGNATION.matcher(plain).matches();
    }

    static Spline parse(String text, String plain, Optional<Member> known) {
        Matcher read = DESIGNATION.matcher(plain);
        if (!read.matches()) {
            throw SplineDesignation.unreadable(text, ADVICE);
        }
        Iso4156.Angle angle = angle(text, Double.parseDouble(read.group(3)));
        return new Iso4156(
                SplineDesignation.member(text, SplineDesignation.internalOrExternal(plain), known, ADVICE),
                Integer.parseInt(read.group(1)),
                Double.parseDouble(read.group(2)),
                angle,
                root(text, angle, read.group(4)),
                Optional.ofNullable(read.group(5)).map(Tolerance::parse));
    }

    private static Iso4156.Angle angle(String text, double deg) {
        for (Iso4156.Angle angle : Iso4156.Angle.values()) {
            if (angle.deg() == deg) {
                return angle;
            }
        }
        throw new ImpossibleFactsException(
                List.of("The pressure angle in \"%s\" is %s degrees. ISO 4156 has 30, 37.5 and 45."
                        .formatted(text, decimal(deg))));
    }

    private static Root root(String text, Iso4156.Angle angle, String letter) {
        if (letter == null && angle == Iso4156.Angle.A30) {
            throw SplineDesignation.unreadable(
                    text, "The root is missing: at 30 degrees it is P, flat, or R, fillet. " + ADVICE);
        }
        return letter != null && letter.equals("P") ? Root.FLAT : Root.FILLET;
    }
}
