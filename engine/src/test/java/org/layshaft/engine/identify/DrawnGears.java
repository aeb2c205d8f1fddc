package org.layshaft.engine.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.layshaft.engine.identify.NormalPitch.Series;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.kb.layout.GearForm;

/** Random standard gears, and what somebody would measure on them: a little thin, worn and misread. */
final class DrawnGears {
    private static final double[] ANGLES_DEG = {20, 20, 20, 14.5, 17.5, 22.5, 25};

    private final Random random;

    DrawnGears(long seed) {
        random = new Random(seed);
    }

    record Drawn(NormalPitch pitch, InvoluteGear gear) {
        boolean is(Candidate candidate) {
            return candidate.pitch().equals(pitch)
                    && candidate.gear().pressureAngleDeg() == gear.pressureAngleDeg()
                    && candidate.gear().teeth() == gear.teeth();
        }
    }

    Drawn next(GearForm form, boolean straight) {
        List<NormalPitch> pitches = NormalPitch.standard().stream()
                .filter(pitch -> pitch.moduleMm() >= 1.25 && pitch.moduleMm() <= 5)
                .filter(pitch -> pitch.series() == Series.MODULE_FIRST || random.nextInt(3) == 0)
                .toList();
        NormalPitch pitch = pitches.get(random.nextInt(pitches.size()));
        double angleDeg = ANGLES_DEG[random.nextInt(ANGLES_DEG.length)];
        double helixDeg = straight ? 0 : 10 + 25 * random.nextDouble();
        int teeth = form == GearForm.INTERNAL ? 40 + random.nextInt(40) : 14 + random.nextInt(40);
        double shift = -0.1 + 0.6 * random.nextDouble();
        InvoluteGear gear = InvoluteGear.of(form, teeth, pitch.moduleMm(), angleDeg, helixDeg, shift);
        return gear.isUndercut() ? next(form, straight) : new Drawn(pitch, gear);
    }

    /** Teeth, tip diameter, helix, two spans, over pins, and a mate on its shaft. */
    BenchGear measured(InvoluteGear gear) {
        double module = gear.moduleMm();
        InvoluteGear thinned = gear.withShift(gear.shift() - 0.02 * random.nextDouble());
        List<Measurement> measurements = new ArrayList<>();
        measurements.add(TipDiameter.of(read(gear.tipMm() - 0.05 * module * random.nextDouble(), 0.03), module));
        measurements.add(
                gear.helixDeg() == 0
                        ? RolledHelix.straight()
                        : RolledHelix.of(read(RolledHelix.of(1).computed(gear).orElseThrow(), 1)));
        if (!gear.isInternal() || gear.helixDeg() == 0) {
            int span = gear.spanTeeth();
            measurements.add(SpanMeasure.of(span, read(thinned.spanMm(span), 0.01)));
            measurements.add(SpanMeasure.of(span + 1, read(thinned.spanMm(span + 1), 0.01)));
        }
        double pinMm = Math.round(4 * gear.usualPinMm()) / 4.0;
        thinned.overPinsMm(pinMm).ifPresent(mm -> measurements.add(PinMeasure.of(pinMm, read(mm, 0.02))));
        return new BenchGear(gear.form(), OptionalInt.of(gear.teeth()), measurements);
    }

    /** The same bench with the distance to a mate as well. */
    BenchGear withMate(BenchGear bench, InvoluteGear gear) {
        int mateTeeth = gear.isInternal() ? 15 : 20 + random.nextInt(30);
        InvoluteGear mate = InvoluteGear.of(
                GearForm.EXTERNAL,
                mateTeeth,
                gear.moduleMm(),
                gear.pressureAngleDeg(),
                gear.helixDeg(),
                0.4 * random.nextDouble());
        double centreMm = InvolutePair.centreMmWithoutBacklash(gear, mate).orElseThrow() + 0.05 * random.nextDouble();
        List<Measurement> more = new ArrayList<>(bench.measurements());
        more.add(CentreDistance.of(mateTeeth, centreMm));
        return new BenchGear(bench.form(), bench.teeth(), more);
    }

    private double read(double actual, double error) {
        return actual + error * (2 * random.nextDouble() - 1);
    }
}
