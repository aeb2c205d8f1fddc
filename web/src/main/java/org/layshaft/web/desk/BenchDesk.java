package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.MISSING;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.identify.BenchGear;
import org.layshaft.engine.identify.CentreDistance;
import org.layshaft.engine.identify.Measurement;
import org.layshaft.engine.identify.PinMeasure;
import org.layshaft.engine.identify.RolledHelix;
import org.layshaft.engine.identify.RootDiameter;
import org.layshaft.engine.identify.SpanMeasure;
import org.layshaft.engine.identify.TipDiameter;
import org.layshaft.engine.spline.Member;
import org.layshaft.engine.spline.Spline;
import org.layshaft.engine.spline.SplineDesignation;
import org.layshaft.engine.spline.SplineEntry;
import org.layshaft.kb.layout.GearForm;

/** Reads what was measured at the bench and says what it may be. */
public final class BenchDesk {
    private static final Pattern TWO = Pattern.compile("([0-9.]{1,8})[ x×:]+([0-9.]{1,10})");
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,5}(\\.[0-9]{1,6})?");

    /** Where the size of the teeth is not known yet, the usual one of such boxes. */
    private static final double ROUGH_MODULE_MM = 2.5;

    private BenchDesk() {}

    /** Throws {@link BadInputException} with everything that cannot be used. */
    public static BenchAnswer identify(BenchRequest request) {
        WrittenNumbers written = new WrittenNumbers();
        if (request.isEmpty()) {
            written.add(new BadInputException(
                    MISSING,
                    "Nothing was measured. Give what you can: teeth, tip diameter, span over teeth, helix, centre distance;"
                            + " or the designation of a spline."));
        }
        Optional<GearForm> form =
                written.unlessRefused(() -> form(request.form().orElse("external")));
        Optional<Integer> teeth = written.whole("number of teeth", request.teeth(), "34");
        List<Measurement> measurements = measurements(request, teeth, written);
        Optional<Spline> spline = request.spline().flatMap(text -> written.unlessRefused(() -> spline(text, request)));
        Optional<Spline> hub =
                request.hub().flatMap(text -> written.unlessRefused(() -> SplineDesignation.parse(text, Member.HUB)));
        written.refuse();
        Optional<BenchGear> gear = request.isOfGear()
                ? written.unlessRefused(() -> new BenchGear(
                        form.orElseThrow(), teeth.map(OptionalInt::of).orElse(OptionalInt.empty()), measurements))
                : Optional.empty();
        Optional<SplineEntry> entry =
                spline.flatMap(shaft -> hub.flatMap(into -> written.unlessRefused(() -> SplineEntry.of(shaft, into))));
        written.refuse();
        return new BenchAnswer(
                gear.map(BenchGear::identify),
                Stream.of(spline, hub).flatMap(Optional::stream).toList(),
                entry);
    }

    private static Spline spline(String text, BenchRequest request) {
        return request.hub().isPresent() ? SplineDesignation.parse(text, Member.SHAFT) : SplineDesignation.parse(text);
    }

    private static List<Measurement> measurements(
            BenchRequest request, Optional<Integer> teeth, WrittenNumbers written) {
        List<Measurement> all = new ArrayList<>();
        Optional<Double> tip =
                written.positive("tip diameter", request.tip(), "88.4").map(Fraction::toDouble);
        double roughMm = tip.flatMap(mm -> teeth.filter(count -> count > 0).map(count -> mm / (count + 2)))
                .orElse(ROUGH_MODULE_MM);
        tip.ifPresent(mm -> all.add(TipDiameter.of(mm, roughMm)));
        written.positive("root diameter", request.root(), "77.1")
                .ifPresent(mm -> all.add(RootDiameter.of(mm.toDouble(), roughMm)));
        request.spans()
                .forEach(text -> two("span over teeth", text, "5 34.72", written)
                        .ifPresent(pair -> all.add(SpanMeasure.of((int) pair[0], pair[1]))));
        request.pins()
                .flatMap(text -> two("measure over pins", text, "4.5 88.12", written))
                .ifPresent(pair -> all.add(PinMeasure.of(pair[0], pair[1])));
        written.number("helix angle", request.helix(), "22")
                .map(Fraction::toDouble)
                .ifPresent(deg -> all.add(deg == 0 ? RolledHelix.straight() : RolledHelix.of(deg)));
        request.centre()
                .flatMap(text -> two("centre distance", text, "37 96", written))
                .ifPresent(pair -> all.add(CentreDistance.of((int) pair[0], pair[1])));
        return all;
    }

    private static Optional<double[]> two(String name, String text, String like, WrittenNumbers written) {
        Matcher read = TWO.matcher(text.strip());
        Function<Integer, Boolean> isNumber =
                group -> NUMBER.matcher(read.group(group)).matches();
        if (!read.matches() || !isNumber.apply(1) || !isNumber.apply(2)) {
            written.add(new BadInputException(
                    MALFORMED, "The %s \"%s\" cannot be read. Write it like this: %s".formatted(name, text, like)));
            return Optional.empty();
        }
        return Optional.of(new double[] {Double.parseDouble(read.group(1)), Double.parseDouble(read.group(2))});
    }

    private static GearForm form(String word) {
        return Stream.of(GearForm.EXTERNAL, GearForm.INTERNAL)
                .filter(form -> form.word().equalsIgnoreCase(word.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "There is no form \"%s\". There are: external, internal.".formatted(word),
                        List.of("external", "internal")));
    }
}
