package org.layshaft.engine.spline;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.layshaft.engine.stated.ImpossibleFactsException;

/** Reads designations of splines as people write them. */
public final class SplineDesignation {
    private static final String EXAMPLES =
            "A spline is written W 30 x 2 x 14 x 8f (DIN 5480), EXT 24z x 2.5m x 30R x 5f (ISO 4156) or EXT 24T 12/24P 30 deg flat root side fit (ANSI B92.1).";

    private SplineDesignation() {}

    /**
     * A spline whose designation tells whether it is a shaft's or a hub's.
     *
     * @throws ImpossibleFactsException where it cannot be read, or is no spline of its standard
     */
    public static Spline parse(String text) {
        return parse(text, Optional.empty());
    }

    /** A spline that is known to be a shaft's or a hub's; its designation need not tell, and must not deny it. */
    public static Spline parse(String text, Member member) {
        return parse(text, Optional.of(member));
    }

    /**
     * Every spline that a designation may mean: more than one where it is to ANSI B92.1 and does not tell root or fit.
     *
     * @throws ImpossibleFactsException where it cannot be read, or is no spline of its standard
     */
    public static List<Spline> possible(String text, Member member) {
        String plain = plain(text);
        return isAnsi(plain)
                ? AnsiB92Text.possible(text, plain, Optional.of(member))
                : List.of(parse(text, Optional.of(member)));
    }

    private static boolean isAnsi(String plain) {
        return !isIso(plain) && (plain.contains("B92") || AnsiB92Text.looksLike(plain));
    }

    private static boolean isIso(String plain) {
        return plain.contains("4156") || Iso4156Text.looksLike(plain);
    }

    private static Spline parse(String text, Optional<Member> known) {
        String plain = plain(text);
        if (isIso(plain)) {
            return Iso4156Text.parse(text, plain, known);
        }
        if (isAnsi(plain)) {
            return AnsiB92Text.parse(text, plain, known);
        }
        if (plain.contains("5480") || Din5480Text.looksLike(plain)) {
            return Din5480Text.parse(text, plain, known);
        }
        throw unreadable(text, EXAMPLES);
    }

    /** One kind of cross, points for commas within numbers, single spaces. */
    private static String plain(String text) {
        return text.replace('\u00d7', 'x')
                .replace('*', 'x')
                .replaceAll("(?<=\\d)\\s*X\\s*(?=\\d)", " x ")
                .replaceAll("(?<=\\d),(?=\\d)", ".")
                .replaceAll("[\u2010-\u2014]", "-")
                .replaceAll("\\s+", " ")
                .strip();
    }

    static ImpossibleFactsException unreadable(String text, String advice) {
        return new ImpossibleFactsException(List.of("\"%s\" is not read as a spline. %s".formatted(text, advice)));
    }

    /** The member that the designation names and the one that is known, which must agree. */
    static Member member(String text, Optional<Member> named, Optional<Member> known, String advice) {
        if (named.isPresent() && known.isPresent() && !named.equals(known)) {
            throw new ImpossibleFactsException(List.of("\"%s\" designates a %s, where a %s is meant. %s"
                    .formatted(text, named.get().word(), known.get().word(), advice)));
        }
        return named.or(() -> known)
                .orElseThrow(() -> new ImpossibleFactsException(
                        List.of("\"%s\" does not tell a shaft from a hub. %s".formatted(text, advice))));
    }

    static Optional<Member> internalOrExternal(String plain) {
        String upper = plain.toUpperCase(Locale.ROOT);
        if (upper.matches(".*\\b(INT|INTERNAL|HUB)\\b.*")) {
            return Optional.of(Member.HUB);
        }
        return upper.matches(".*\\b(EXT|EXTERNAL|SHAFT)\\b.*") ? Optional.of(Member.SHAFT) : Optional.empty();
    }
}
