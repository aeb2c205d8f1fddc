package org.layshaft.engine.spline;

import static org.layshaft.engine.stated.Shown.decimal;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.stated.Objections;

/** {@code ANSI B92.1 EXT 24T 12/24P 30 deg flat root side fit class 5}, its words in any order. */
final class AnsiB92Text {
    private static final Pattern TEETH = pattern("\\b(\\d+) ?(?:T|teeth|tooth)\\b");
    private static final Pattern PITCH = pattern("\\b(\\d+(?:\\.\\d+)?) ?/ ?(\\d+(?:\\.\\d+)?) ?P?");
    private static final Pattern ANGLE = pattern("\\b(30|37\\.5|45) ?(?:\u00b0|deg)");
    private static final Pattern ROOT = pattern("\\b(flat|fillet) ?root");
    private static final Pattern FIT = pattern("\\b(side|maj)[a-z.]*(?: ?dia[a-z.]*)? ?fit");
    private static final Pattern CLASS = pattern("\\bclass ?(\\d)\\b");
    private static final String ADVICE =
            "ANSI B92.1 is written EXT for a shaft or INT for a hub, 24T 12/24P 30 deg flat root side fit class 5.";

    private AnsiB92Text() {}

    static boolean looksLike(String plain) {
        return PITCH.matcher(plain).find();
    }

    static Spline parse(String text, String plain, Optional<Member> known) {
        Optional<String> teeth = found(TEETH, plain, 1);
        Optional<String> pitch = found(PITCH, plain, 1);
        Optional<String> stub = found(PITCH, plain, 2);
        Optional<String> angle = found(ANGLE, plain, 1);
        double deg = angle.map(Double::parseDouble).orElse(30.0);
        // at the steeper angles the standard has one form only
        Optional<Root> root = found(ROOT, plain, 1)
                .map(word -> word.equalsIgnoreCase("flat") ? Root.FLAT : Root.FILLET)
                .or(() -> deg == 30 ? Optional.empty() : Optional.of(Root.FILLET));
        Optional<Fit> fit = found(FIT, plain, 1)
                .map(word -> word.equalsIgnoreCase("side") ? Fit.SIDE : Fit.MAJOR_DIAMETER)
                .or(() -> deg == 30 ? Optional.empty() : Optional.of(Fit.SIDE));
        new Objections()
                .unless(teeth.isPresent(), "The teeth are missing in \"%s\". %s", text, ADVICE)
                .unless(pitch.isPresent(), "The pitch is missing in \"%s\". %s", text, ADVICE)
                .unless(
                        angle.isPresent(),
                        "The pressure angle is missing in \"%s\": 30, 37.5 or 45 deg. %s",
                        text,
                        ADVICE)
                .unless(root.isPresent(), "The root is missing in \"%s\": flat root or fillet root. %s", text, ADVICE)
                .unless(
                        fit.isPresent(),
                        "The fit is missing in \"%s\": side fit or major diameter fit. %s",
                        text,
                        ADVICE)
                .refuse();
        double perInch = Double.parseDouble(pitch.get());
        Optional<AnsiB92.Form> form = AnsiB92.Form.of(deg, root.get(), fit.get());
        new Objections()
                .unless(
                        Math.abs(Double.parseDouble(stub.get()) - 2 * perInch) < 1e-9,
                        "The pitch is %s/%s. The second number is twice the first: %s/%s.",
                        pitch.get(),
                        stub.get(),
                        pitch.get(),
                        decimal(2 * perInch))
                .unless(
                        form.isPresent(),
                        "ANSI B92.1 has no %s deg %s %s.",
                        decimal(deg),
                        root.get().word(),
                        fit.get().word())
                .refuse();
        return new AnsiB92(
                SplineDesignation.member(text, SplineDesignation.internalOrExternal(plain), known, ADVICE),
                Integer.parseInt(teeth.get()),
                perInch,
                form.get(),
                found(CLASS, plain, 1)
                        .map(Integer::parseInt)
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty()));
    }

    private static Optional<String> found(Pattern pattern, String plain, int group) {
        Matcher matcher = pattern.matcher(plain);
        return matcher.find() ? Optional.of(matcher.group(group)) : Optional.empty();
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }
}
