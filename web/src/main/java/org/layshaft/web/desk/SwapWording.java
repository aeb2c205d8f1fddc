package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.Comparison;
import org.layshaft.engine.swap.TiedAxles;
import org.layshaft.engine.words.Names;

/** What a change does, in sentences. */
public final class SwapWording {
    private SwapWording() {}

    /** {@code Curlew with tyres of 205/55 R16}. */
    public static String asked(SwapAnswer answer) {
        String name = answer.comparison().before().layout().name();
        return answer.what().isEmpty() ? name + " as it is" : "%s with %s".formatted(name, Names.joined(answer.what()));
    }

    /** Everything that is not a figure of a gear. */
    public static List<String> says(SwapAnswer answer) {
        List<String> says = new ArrayList<>();
        answer.serving().ifPresent(serving -> {
            says.add(FitWording.verdict(serving));
            if (serving.verdict() == FitVerdict.DOES_NOT_FIT) {
                says.add("The figures are those that it would have if it did.");
            }
            says.addAll(ExchangeWording.thrust(serving));
            says.addAll(ExchangeWording.setAgain(serving));
        });
        Comparison comparison = answer.comparison();
        says.add(speedometer(comparison.speedometer()));
        says.add(
                comparison.namesHold()
                        ? "Every place of the lever gives the gear that it gave."
                        : comparison.gateHolds()
                                ? "Gears change their names: what was one number is another by its ratio now."
                                : "A place of the lever gives no gear of its own any more, or a new one.");
        says.add(
                comparison.interlockHolds()
                        ? "The interlock keeps apart what it kept apart."
                        : "The interlock does not keep apart what it kept apart, or two gears at once come to something"
                                + " else.");
        comparison.axlesAfter().stream()
                .filter(axles -> !axles.match())
                .map(SwapWording::mismatch)
                .forEach(says::add);
        comparison.pairs().forEach(pair -> says.addAll(pair.unlike()));
        return says;
    }

    /** What the speedometer does after the change, if it read truly before. */
    public static String speedometer(Telling<SpeedometerChange> change) {
        Telling<Fraction> error = change.then(SpeedometerChange::errorPercent);
        return error.map(SwapWording::reads)
                .value()
                .orElseGet(() -> "What it does to the speedometer cannot be told: %s."
                        .formatted(String.join("; ", error.because())));
    }

    private static String reads(Fraction percent) {
        return percent.isZero()
                ? "The speedometer reads as it did."
                : "The speedometer, if it read truly before, now reads %s per cent too %s: at a true 100 it shows %s."
                        .formatted(
                                Decimals.rounded(percent.absolute(), 1),
                                percent.signum() > 0 ? "high" : "low",
                                Decimals.rounded(Fraction.of(100).plus(percent), 1));
    }

    private static String mismatch(TiedAxles axles) {
        return "In %s the axles do not match: %s to 1 and %s to 1. On a firm road the box winds up; it must not be driven so."
                .formatted(
                        Names.gearName(axles.gear()),
                        Decimals.three(axles.ratioOfFirst().absolute()),
                        Decimals.three(axles.ratioOfSecond().absolute()));
    }

    /** What is missing for figures that cannot be told, each once. */
    public static List<String> untold(List<SwapLine> lines) {
        return lines.stream()
                .flatMap(line -> line.because().stream())
                .distinct()
                .toList();
    }
}
