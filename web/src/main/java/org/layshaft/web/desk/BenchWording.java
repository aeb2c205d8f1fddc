package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.engine.identify.Candidate;
import org.layshaft.engine.identify.Identification;
import org.layshaft.engine.identify.Residual;
import org.layshaft.engine.spline.Spline;
import org.layshaft.engine.spline.SplineEntry;
import org.layshaft.engine.stated.Telling;

/** What something at the bench may be, in words. */
public final class BenchWording {
    private BenchWording() {}

    /** What comes of the measurements, before the candidates. */
    public static List<String> says(Telling<Identification> gear) {
        Optional<Identification> told = gear.value();
        if (told.isEmpty()) {
            return List.of("It cannot be told: %s.".formatted(String.join("; ", gear.because())));
        }
        Identification identification = told.get();
        List<String> says = new ArrayList<>(identification.contradictions());
        int best = identification.best().size();
        if (identification.isConsistent()) {
            says.add(
                    best == 1
                            ? "One standard gear agrees best: %s."
                                    .formatted(identification.best().get(0).words())
                            : "%d standard gears agree equally well.".formatted(best));
        }
        identification
                .next()
                .ifPresent(next -> says.add("To tell them apart, measure %s: %s."
                        .formatted(
                                next.what(),
                                next.wouldBe().stream()
                                        .map(each -> "%s mm for %s"
                                                .formatted(
                                                        three(each.mm()),
                                                        each.candidate().words()))
                                        .collect(Collectors.joining("; ")))));
        return says;
    }

    /** {@code 1. 34 teeth, module 2.5 mm, …}. */
    public static String of(Candidate candidate) {
        return "%d. %s".formatted(candidate.rank(), candidate.words());
    }

    /** {@code the tip diameter: 88.400 mm measured, 88.360 mm here, 0.040 mm more}. */
    public static String of(Residual residual) {
        if (Double.isNaN(residual.computed())) {
            return "%s cannot be measured on it"
                    .formatted(residual.measurement().what());
        }
        double off = residual.difference();
        String unit = residual.measurement().unit();
        return "%s: %s %s measured, %s %s here, %s %s %s%s"
                .formatted(
                        residual.measurement().what(),
                        three(residual.measurement().measured()),
                        unit,
                        three(residual.computed()),
                        unit,
                        three(Math.abs(off)),
                        unit,
                        off < 0 ? "less" : "more",
                        residual.isWithinAllowance() ? "" : ", beyond the allowance");
    }

    /** The dimensions of a spline. */
    public static List<String> of(Spline spline) {
        return List.of(
                "%s, a %s".formatted(spline.standard(), spline.member().word()),
                "teeth: %d".formatted(spline.teeth()),
                "module: %s mm".formatted(three(spline.moduleMm())),
                "pressure angle: %s°".formatted(three(spline.pressureAngleDeg())),
                "outer diameter of the teeth: %s mm".formatted(three(spline.majorMm())),
                "inner diameter of the teeth: %s mm".formatted(three(spline.minorMm())),
                "pitch diameter: %s mm".formatted(three(spline.pitchMm())),
                "base diameter: %s mm".formatted(three(spline.baseMm())),
                "%s along the pitch circle: %s mm"
                        .formatted(
                                spline.member().word().equals("shaft") ? "tooth" : "space",
                                three(spline.toothOrSpaceMm())));
    }

    /** Whether the shaft enters the hub. */
    public static String of(SplineEntry entry) {
        return switch (entry.verdict()) {
            case ENTERS -> "The shaft enters the hub and carries torque in it.";
            case DOES_NOT -> "The shaft does not serve in the hub.";
            case CANNOT_BE_TOLD -> "Whether the shaft enters the hub cannot be told.";
        };
    }

    static String three(double number) {
        return String.format(Locale.ROOT, "%.3f", number);
    }
}
