package org.layshaft.engine.spline;

import static org.layshaft.engine.stated.Shown.decimal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.layshaft.engine.stated.Objections;

/**
 * A spline to ANSI B92.1: by diametral pitch, with stub teeth. Hubs are held to the nominal size and every tolerance
 * class leaves the shaft room in them.
 *
 * @param pitchPerInch the first number of the pitch: 12 of 12/24
 */
public record AnsiB92(Member member, int teeth, double pitchPerInch, Form form, OptionalInt toleranceClass)
        implements Spline {
    static final String NAME = "ANSI B92.1";

    private static final double MM_PER_INCH = 25.4;
    private static final double[] PITCHES = {2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48, 64, 80, 128};

    /** From this pitch on a shaft's fillet roots at 30 degrees are deeper. */
    private static final double FINE_PITCH = 16;

    /** Pressure angle, root and fit go together; diameters beyond or within the pitch circle are in inches times pitch. */
    public enum Form {
        FLAT_SIDE_30(30, Root.FLAT, Fit.SIDE, 2.5, 32, 1.35, 1, 1.35, 0),
        FLAT_MAJOR_30(30, Root.FLAT, Fit.MAJOR_DIAMETER, 3, 16, 1, 1, 1.35, 0),
        FILLET_SIDE_30(30, Root.FILLET, Fit.SIDE, 2.5, 48, 1.8, 1, 1.8, 0),
        FILLET_SIDE_37_5(37.5, Root.FILLET, Fit.SIDE, 2.5, 48, 1.6, 0.8, 1.3, 0.1),
        FILLET_SIDE_45(45, Root.FILLET, Fit.SIDE, 10, 128, 1.4, 0.6, 1, 0.1);

        private final double deg;
        private final Root root;
        private final Fit fit;
        private final double coarsest;
        private final double finest;
        private final double hubMajor;
        private final double hubMinor;
        private final double shaftMinor;
        private final double wider;

        Form(
                double deg,
                Root root,
                Fit fit,
                double coarsest,
                double finest,
                double hubMajor,
                double hubMinor,
                double shaftMinor,
                double wider) {
            this.deg = deg;
            this.root = root;
            this.fit = fit;
            this.coarsest = coarsest;
            this.finest = finest;
            this.hubMajor = hubMajor;
            this.hubMinor = hubMinor;
            this.shaftMinor = shaftMinor;
            this.wider = wider;
        }

        /** As written: {@code 30 deg flat root side fit}. */
        public String words() {
            return decimal(deg) + " deg " + root.word() + " " + fit.word();
        }

        /** Those of this angle with this root and this fit, as far as they are told. */
        static List<Form> of(double deg, Optional<Root> root, Optional<Fit> fit) {
            return Stream.of(values())
                    .filter(form -> form.deg == deg)
                    .filter(form -> root.isEmpty() || form.root == root.get())
                    .filter(form -> fit.isEmpty() || form.fit == fit.get())
                    .toList();
        }

        boolean has(double pitchPerInch) {
            return StandardSeries.among(pitchPerInch, PITCHES) && pitchPerInch >= coarsest && pitchPerInch <= finest;
        }
    }

    public AnsiB92 {
        new Objections()
                .unless(teeth >= 6, "The number of teeth is %s. It must be at least 6.", teeth)
                .unless(
                        form.has(pitchPerInch),
                        "The pitch is %s/%s. ANSI B92.1 has %s with %s/%s to %s/%s, of the series %s.",
                        decimal(pitchPerInch),
                        decimal(2 * pitchPerInch),
                        form.words(),
                        decimal(form.coarsest),
                        decimal(2 * form.coarsest),
                        decimal(form.finest),
                        decimal(2 * form.finest),
                        StandardSeries.list(PITCHES))
                .unless(
                        toleranceClass.orElse(5) >= 4 && toleranceClass.orElse(5) <= 7,
                        "The tolerance class is %s. ANSI B92.1 has 4, 5, 6 and 7.",
                        toleranceClass.orElse(5))
                .refuse();
    }

    @Override
    public String standard() {
        return NAME;
    }

    @Override
    public double moduleMm() {
        return MM_PER_INCH / pitchPerInch;
    }

    @Override
    public double pressureAngleDeg() {
        return form.deg;
    }

    @Override
    public double shift() {
        return 0;
    }

    @Override
    public double majorMm() {
        return moduleMm() * (teeth + (member == Member.HUB ? form.hubMajor : 1));
    }

    @Override
    public double minorMm() {
        return moduleMm() * (teeth - (member == Member.HUB ? form.hubMinor : shaftMinor()));
    }

    @Override
    public double toothOrSpaceMm() {
        return moduleMm() * (Math.PI / 2 + form.wider);
    }

    @Override
    public Optional<Root> root() {
        return Optional.of(form.root);
    }

    @Override
    public Fit fit() {
        return form.fit;
    }

    @Override
    public String designation() {
        return "ANSI B92.1 %s %sT %s/%sP %s%s"
                .formatted(
                        member == Member.SHAFT ? "EXT" : "INT",
                        teeth,
                        decimal(pitchPerInch),
                        decimal(2 * pitchPerInch),
                        form.words(),
                        toleranceClass.isPresent() ? " class " + toleranceClass.getAsInt() : "");
    }

    @Override
    public Optional<Integer> tightness() {
        return Optional.of(0);
    }

    private double shaftMinor() {
        return form == Form.FILLET_SIDE_30 && pitchPerInch >= FINE_PITCH ? 2 : form.shaftMinor;
    }
}
