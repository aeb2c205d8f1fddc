package org.layshaft.engine.spline;

import static org.layshaft.engine.stated.Shown.decimal;

import java.util.Optional;
import org.layshaft.engine.stated.Objections;

/**
 * A spline to ISO 4156: metric module, side fit, no profile shift.
 *
 * @param angle fixes the pressure angle, and how far the teeth reach
 */
public record Iso4156(Member member, int teeth, double moduleMm, Angle angle, Root form, Optional<Tolerance> tolerance)
        implements Spline {
    static final String NAME = "ISO 4156";

    private static final double[] COARSE_MM = {0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 8, 10};
    private static final double[] FINE_MM = {0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5};

    /** Room, in modules, between where the involute must hold and where the mate's tip ends. */
    private static final double FORM_CLEARANCE = 0.1;

    /** Pressure angle, with addendum and fillet dedendum in modules. */
    public enum Angle {
        A30(30, 0.5, 0.9),
        A37_5(37.5, 0.45, 0.7),
        A45(45, 0.4, 0.6);

        private final double deg;
        private final double addendum;
        private final double filletDedendum;

        Angle(double deg, double addendum, double filletDedendum) {
            this.deg = deg;
            this.addendum = addendum;
            this.filletDedendum = filletDedendum;
        }

        public double deg() {
            return deg;
        }
    }

    public Iso4156 {
        double[] series = angle == Angle.A45 ? FINE_MM : COARSE_MM;
        Objections objections = new Objections()
                .unless(
                        StandardSeries.among(moduleMm, series),
                        "The module is %s mm. At %s degrees ISO 4156 has %s.",
                        decimal(moduleMm),
                        decimal(angle.deg),
                        StandardSeries.list(series))
                .unless(teeth >= 6, "The number of teeth is %s. It must be at least 6.", teeth)
                .unless(
                        angle == Angle.A30 || form == Root.FILLET,
                        "At %s degrees ISO 4156 has fillet roots only; this is stated as flat.",
                        decimal(angle.deg));
        tolerance.ifPresent(stated -> objections
                .unless(
                        stated.suits(member),
                        "The tolerance %s does not suit a %s: a shaft's is written small, 5f, a hub's in capitals, 5H.",
                        stated,
                        member.word())
                .unless(
                        stated.grade() >= 4 && stated.grade() <= 7,
                        "The tolerance class is %s. ISO 4156 has 4, 5, 6 and 7.",
                        stated.grade()));
        objections.refuse();
    }

    @Override
    public String standard() {
        return NAME;
    }

    @Override
    public double pressureAngleDeg() {
        return angle.deg;
    }

    @Override
    public double shift() {
        return 0;
    }

    @Override
    public double majorMm() {
        return moduleMm * (teeth + 2 * (member == Member.HUB ? dedendum() : angle.addendum));
    }

    /** A hub's tips clear by the form clearance what a shaft's flanks must have of true involute. */
    @Override
    public double minorMm() {
        if (member == Member.SHAFT) {
            return moduleMm * (teeth - 2 * dedendum());
        }
        double sine = Math.sin(Math.toRadians(angle.deg));
        double depth = (angle.addendum + FORM_CLEARANCE) * moduleMm;
        return Math.hypot(baseMm(), pitchMm() * sine - 2 * depth / sine) + 2 * FORM_CLEARANCE * moduleMm;
    }

    @Override
    public double toothOrSpaceMm() {
        return Math.PI / 2 * moduleMm;
    }

    @Override
    public Optional<Root> root() {
        return Optional.of(form);
    }

    @Override
    public Fit fit() {
        return Fit.SIDE;
    }

    @Override
    public String designation() {
        String letter = form == Root.FLAT ? "P" : "R";
        return "%s %sz x %sm x %s%s%s ISO 4156"
                .formatted(
                        member == Member.SHAFT ? "EXT" : "INT",
                        teeth,
                        decimal(moduleMm),
                        decimal(angle.deg),
                        angle == Angle.A30 ? letter : "",
                        tolerance.map(stated -> " x " + stated).orElse(""));
    }

    @Override
    public Optional<Integer> tightness() {
        return tolerance.map(Tolerance::tightness);
    }

    private double dedendum() {
        return form == Root.FLAT ? 0.75 : angle.filletDedendum;
    }
}
