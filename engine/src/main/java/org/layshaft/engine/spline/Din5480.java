package org.layshaft.engine.spline;

import static org.layshaft.engine.stated.Shown.decimal;

import java.util.Optional;
import org.layshaft.engine.stated.Objections;

/**
 * A spline to DIN 5480: 30 degrees, flank centred, its profile shifted so that the teeth end near a round reference
 * diameter.
 *
 * @param referenceMm the reference diameter of the designation
 */
public record Din5480(Member member, double referenceMm, double moduleMm, int teeth, Optional<Tolerance> tolerance)
        implements Spline {
    static final String NAME = "DIN 5480";

    private static final double[] MODULES_MM = {0.5, 0.6, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 8, 10};
    private static final double LEAST_SHIFT = -0.05;
    private static final double MOST_SHIFT = 0.45;
    private static final double HARDLY = 1e-9;

    /** How a shaft's spaces are cut decides how deep they must be. */
    public enum Cutting {
        BROACHED(0.55),
        HOBBED(0.60),
        SHAPED(0.65);

        private final double dedendum;

        Cutting(double dedendum) {
            this.dedendum = dedendum;
        }
    }

    public Din5480 {
        Objections objections = new Objections()
                .unless(
                        StandardSeries.among(moduleMm, MODULES_MM),
                        "The module is %s mm. DIN 5480 has %s.",
                        decimal(moduleMm),
                        StandardSeries.list(MODULES_MM))
                .unless(teeth >= 6, "The number of teeth is %s. It must be at least 6.", teeth)
                .unless(
                        referenceMm > 0,
                        "The reference diameter is %s mm. It must be more than 0.",
                        decimal(referenceMm));
        tolerance.ifPresent(stated -> objections.unless(
                stated.suits(member),
                "The tolerance %s does not suit a %s: a shaft's is written small, 8f, a hub's in capitals, 9H.",
                stated,
                member.word()));
        objections.refuse();
        double shift = shift(referenceMm, moduleMm, teeth);
        new Objections()
                .unless(
                        shift >= LEAST_SHIFT - HARDLY && shift <= MOST_SHIFT + HARDLY,
                        "%s x %s x %s needs a profile shift of %s. DIN 5480 has from -0.05 to 0.45: with %s mm and module %s, %s; with %s teeth, a reference diameter from %s to %s mm.",
                        decimal(referenceMm),
                        decimal(moduleMm),
                        teeth,
                        decimal(shift),
                        decimal(referenceMm),
                        decimal(moduleMm),
                        teethInstead(referenceMm, moduleMm),
                        teeth,
                        decimal(referenceMm(moduleMm, teeth, LEAST_SHIFT)),
                        decimal(referenceMm(moduleMm, teeth, MOST_SHIFT)))
                .refuse();
    }

    @Override
    public String standard() {
        return NAME;
    }

    @Override
    public double pressureAngleDeg() {
        return 30;
    }

    @Override
    public double shift() {
        return shift(referenceMm, moduleMm, teeth);
    }

    @Override
    public double majorMm() {
        return member == Member.HUB ? referenceMm : referenceMm - 0.2 * moduleMm;
    }

    @Override
    public double minorMm() {
        return member == Member.HUB ? referenceMm - 2 * moduleMm : minorMm(Cutting.BROACHED);
    }

    /** A shaft's root diameter as it comes from this way of cutting. */
    public double minorMm(Cutting cutting) {
        return pitchMm() + 2 * (shift() - cutting.dedendum) * moduleMm;
    }

    @Override
    public double toothOrSpaceMm() {
        return moduleMm * (Math.PI / 2 + 2 * shift() * Math.tan(Math.toRadians(30)));
    }

    @Override
    public Optional<Root> root() {
        return Optional.empty();
    }

    @Override
    public Fit fit() {
        return Fit.SIDE;
    }

    @Override
    public String designation() {
        return "DIN 5480 - %s %s x %s x %s%s"
                .formatted(
                        member == Member.SHAFT ? "W" : "N",
                        decimal(referenceMm),
                        decimal(moduleMm),
                        teeth,
                        tolerance.map(stated -> " x " + stated).orElse(""));
    }

    @Override
    public Optional<Integer> tightness() {
        return tolerance.map(Tolerance::tightness);
    }

    private static double shift(double referenceMm, double moduleMm, int teeth) {
        return (referenceMm - moduleMm * teeth - 1.1 * moduleMm) / (2 * moduleMm);
    }

    private static double referenceMm(double moduleMm, int teeth, double shift) {
        return moduleMm * (teeth + 1.1 + 2 * shift);
    }

    private static String teethInstead(double referenceMm, double moduleMm) {
        double unshifted = referenceMm / moduleMm - 1.1;
        long least = (long) Math.ceil(unshifted - 2 * MOST_SHIFT - HARDLY);
        long most = (long) Math.floor(unshifted - 2 * LEAST_SHIFT + HARDLY);
        if (most < 6 || least > most) {
            return "no number of teeth";
        }
        return least == most ? least + " teeth" : least + " or " + most + " teeth";
    }
}
