package org.layshaft.engine.spline;

import static org.layshaft.engine.stated.Shown.decimal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.stated.Objections;

/** {@code ANSI B92.1 EXT 24T 12/24P 30 deg flat root side fit class 5}, its words in any order. */
final class AnsiB92Text {
    private static final Pattern TEETH = pattern("\\b(\\d+) ?(?:T|teeth|tooth)\\b");
    private static final Pattern PITCH = pattern("\\b(\\d+(?:\\.\\d+)?) ?/ ?(\\d+(?:\\.\\d+)?) ?P?");
    private static final Pattern ANGLE = pattern("(?<!/ ?)\\b(30|37\\.5|45) ?(?:\u00b0|deg|$)");
    private static final Pattern ROOT = pattern("\\b(flat|fillet) ?root");
    private static final Pattern FIT = pattern("\\b(side|maj)[a-z.]*(?: ?dia[a-z.]*)? ?fit");
    private static final Pattern CLASS = pattern("\\bclass ?(\\d)\\b");
    private static final String ADVICE =
            "ANSI B92.1 is written EXT for a shaft or INT for a hub, 24T 12/24P 30 deg flat root side fit class 5.";

    private final String text;
    private final String plain;
    private final int teeth;
    private final double perInch;
    private final double deg;
    private final Optional<Root> root;
    private final Optional<Fit> fit;
    private final OptionalInt toleranceClass;

    private AnsiB92Text(String text, String plain) {
        this.text = text;
        this.plain = plain;
        Optional<String> toldTeeth = found(TEETH, plain, 1);
        Optional<String> pitch = found(PITCH, plain, 1);
        Optional<String> stub = found(PITCH, plain, 2);
        Optional<String> angle = found(ANGLE, plain, 1);
        this.deg = angle.map(Double::parseDouble).orElse(30.0);
        // at the steeper angles the standard has one form only
        this.root = found(ROOT, plain, 1)
                .map(word -> word.equalsIgnoreCase("flat") ? Root.FLAT : Root.FILLET)
                .or(() -> deg == 30 ? Optional.empty() : Optional.of(Root.FILLET));
        this.fit = found(FIT, plain, 1)
                .map(word -> word.equalsIgnoreCase("side") ? Fit.SIDE : Fit.MAJOR_DIAMETER)
                .or(() -> deg == 30 ? Optional.empty() : Optional.of(Fit.SIDE));
        new Objections()
                .unless(toldTeeth.isPresent(), "The teeth are missing in \"%s\". %s", text, ADVICE)
                .unless(pitch.isPresent(), "The pitch is missing in \"%s\". %s", text, ADVICE)
                .unless(
                        angle.isPresent(),
                        "The pressure angle is missing in \"%s\": 30, 37.5 or 45 deg. %s",
                        text,
                        ADVICE)
                .refuse();
        this.teeth = Integer.parseInt(toldTeeth.get());
        this.perInch = Double.parseDouble(pitch.get());
        this.toleranceClass = found(CLASS, plain, 1)
                .map(Integer::parseInt)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
        new Objections()
                .unless(
                        Math.abs(Double.parseDouble(stub.get()) - 2 * perInch) < 1e-9,
                        "The pitch is %s/%s. The second number is twice the first: %s/%s.",
                        pitch.get(),
                        stub.get(),
                        pitch.get(),
                        decimal(2 * perInch))
                .refuse();
    }

    static boolean looksLike(String plain) {
        return PITCH.matcher(plain).find();
    }

    /** With root and fit told. */
    static Spline parse(String text, String plain, Optional<Member> known) {
        AnsiB92Text read = new AnsiB92Text(text, plain);
        read.mustTellRootAndFit();
        return read.possible(known).get(0);
    }

    /** Every spline that may be meant where root or fit are not told. */
    static List<Spline> possible(String text, String plain, Optional<Member> known) {
        return new AnsiB92Text(text, plain).possible(known);
    }

    private void mustTellRootAndFit() {
        new Objections()
                .unless(root.isPresent(), "The root is missing in \"%s\": flat root or fillet root. %s", text, ADVICE)
                .unless(
                        fit.isPresent(),
                        "The fit is missing in \"%s\": side fit or major diameter fit. %s",
                        text,
                        ADVICE)
                .refuse();
    }

    private List<Spline> possible(Optional<Member> known) {
        List<AnsiB92.Form> forms = AnsiB92.Form.of(deg, root, fit);
        new Objections()
                .unless(
                        !forms.isEmpty(),
                        "ANSI B92.1 has no %s deg %s %s.",
                        decimal(deg),
                        root.map(Root::word).orElse(""),
                        fit.map(Fit::word).orElse(""))
                .refuse();
        Member member = SplineDesignation.member(text, SplineDesignation.internalOrExternal(plain), known, ADVICE);
        // a pitch that one form lacks tells that another is meant
        List<AnsiB92.Form> ofThisPitch =
                forms.stream().filter(form -> form.has(perInch)).toList();
        return (ofThisPitch.isEmpty() ? forms : ofThisPitch)
                .stream()
                        .<Spline>map(form -> new AnsiB92(member, teeth, perInch, form, toleranceClass))
                        .toList();
    }

    private static Optional<String> found(Pattern pattern, String plain, int group) {
        Matcher matcher = pattern.matcher(plain);
        return matcher.find() ? Optional.of(matcher.group(group)) : Optional.empty();
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }
}
