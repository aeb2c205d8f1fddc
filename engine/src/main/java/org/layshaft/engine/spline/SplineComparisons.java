package org.layshaft.engine.spline;

import static org.layshaft.engine.stated.Shown.decimal;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.spline.SplineComparison.Outcome;

/** Everything about a splined shaft and hub that must agree, held against each other. */
final class SplineComparisons {
    private static final double NO_DIFFERENCE = 1e-6;

    private final Spline shaft;
    private final Spline hub;

    private SplineComparisons(Spline shaft, Spline hub) {
        this.shaft = shaft;
        this.hub = hub;
    }

    static List<SplineComparison> of(Spline shaft, Spline hub) {
        SplineComparisons both = new SplineComparisons(shaft, hub);
        return List.of(
                both.words("standard", shaft.standard(), hub.standard()),
                both.numbers("pressure angle", shaft.pressureAngleDeg(), hub.pressureAngleDeg(), " deg"),
                both.module(),
                both.words("number of teeth", "" + shaft.teeth(), "" + hub.teeth()),
                both.numbers("profile shift", shaft.shift(), hub.shift(), " modules"),
                both.words("fit", shaft.fit().word(), hub.fit().word()),
                both.root(),
                both.clearance(
                        "outer diameters", shaft.majorMm(), hub.majorMm(), "the shaft's tips", "the hub's roots"),
                both.clearance(
                        "inner diameters", shaft.minorMm(), hub.minorMm(), "the shaft's roots", "the hub's tips"),
                both.contact(),
                both.play());
    }

    private SplineComparison words(String what, String ofShaft, String ofHub) {
        boolean same = ofShaft.equals(ofHub);
        return comparison(
                what,
                ofShaft,
                ofHub,
                same ? Outcome.SUITS : Outcome.BARS,
                same ? "The same." : "The two must have one %s.".formatted(what));
    }

    private SplineComparison numbers(String what, double ofShaft, double ofHub, String unit) {
        boolean same = Math.abs(ofShaft - ofHub) < NO_DIFFERENCE;
        return comparison(
                what,
                decimal(ofShaft) + unit,
                decimal(ofHub) + unit,
                same ? Outcome.SUITS : Outcome.BARS,
                same ? "The same." : "They differ by %s%s.".formatted(decimal(Math.abs(ofShaft - ofHub)), unit));
    }

    /** A diametral pitch is told as such, since the module that it comes to is no round number. */
    private SplineComparison module() {
        SplineComparison inMm = numbers("module", shaft.moduleMm(), hub.moduleMm(), " mm");
        return comparison(inMm.what(), module(shaft), module(hub), inMm.outcome(), inMm.why());
    }

    private static String module(Spline spline) {
        return spline instanceof AnsiB92 byPitch
                ? "%s mm (pitch %s/%s)"
                        .formatted(
                                decimal(byPitch.moduleMm()),
                                decimal(byPitch.pitchPerInch()),
                                decimal(2 * byPitch.pitchPerInch()))
                : decimal(spline.moduleMm()) + " mm";
    }

    /** Roots of another shape only take room from the mate's tips, and that is compared as diameters. */
    private SplineComparison root() {
        String ofShaft = shaft.root().map(Root::word).orElse("the standard's one");
        String ofHub = hub.root().map(Root::word).orElse("the standard's one");
        boolean same = shaft.root().equals(hub.root());
        return comparison(
                "root",
                ofShaft,
                ofHub,
                same ? Outcome.SUITS : Outcome.HARMLESS,
                same ? "The same." : "The diameters tell whether the tips have room in them.");
    }

    private SplineComparison clearance(String what, double ofShaft, double ofHub, String shafts, String hubs) {
        double room = (ofHub - ofShaft) / 2;
        Outcome outcome = room > -NO_DIFFERENCE ? Outcome.SUITS : Outcome.BARS;
        String why = room < -NO_DIFFERENCE
                ? "%s reach %s mm into %s.".formatted(capital(shafts), decimal(-room), hubs)
                : "Between %s and %s there is %s mm.".formatted(shafts, hubs, decimal(Math.max(0, room)));
        return comparison(what, decimal(ofShaft) + " mm", decimal(ofHub) + " mm", outcome, why);
    }

    /** Teeth that do not reach past each other's tips carry nothing. */
    private SplineComparison contact() {
        double depth = (shaft.majorMm() - hub.minorMm()) / 2;
        return comparison(
                "tips",
                decimal(shaft.majorMm()) + " mm",
                decimal(hub.minorMm()) + " mm",
                depth > NO_DIFFERENCE ? Outcome.SUITS : Outcome.BARS,
                depth > NO_DIFFERENCE
                        ? "The teeth reach %s mm past each other's tips.".formatted(decimal(depth))
                        : "The teeth do not reach each other: no torque is carried.");
    }

    private SplineComparison play() {
        Optional<Integer> ofShaft = shaft.tightness();
        Optional<Integer> ofHub = hub.tightness();
        String shaftWords = tolerance(shaft);
        String hubWords = tolerance(hub);
        if (ofShaft.isEmpty() || ofHub.isEmpty()) {
            return comparison(
                    "tolerance", shaftWords, hubWords, Outcome.CANNOT_BE_TOLD, "Whether there is play cannot be told.");
        }
        int least = Math.min(ofShaft.get(), ofHub.get());
        int most = Math.max(ofShaft.get(), ofHub.get());
        if (most <= 0) {
            String play = least < 0 ? "The teeth have play in the spaces." : "The teeth just go into the spaces.";
            return comparison("tolerance", shaftWords, hubWords, Outcome.SUITS, play);
        }
        return least < 0
                ? comparison(
                        "tolerance",
                        shaftWords,
                        hubWords,
                        Outcome.CANNOT_BE_TOLD,
                        "One gives play, the other takes it: the sizes in the standard's tables decide.")
                : comparison(
                        "tolerance",
                        shaftWords,
                        hubWords,
                        Outcome.BARS,
                        "The teeth may be thicker than the spaces: the shaft goes in by force, if at all.");
    }

    private static String tolerance(Spline spline) {
        if (spline instanceof Din5480 din) {
            return din.tolerance().map(Tolerance::toString).orElse("not stated");
        }
        return spline instanceof Iso4156 iso
                ? iso.tolerance().map(Tolerance::toString).orElse("not stated")
                : "any class of the standard";
    }

    private static SplineComparison comparison(String what, String ofShaft, String ofHub, Outcome outcome, String why) {
        return new SplineComparison(what, ofShaft, ofHub, outcome, why);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
