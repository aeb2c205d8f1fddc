package org.layshaft.engine.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.involute.InvoluteGear;

/**
 * Finds the shift, and for helical teeth the helix angle, with which a gear of given teeth, module and pressure angle comes
 * nearest the measurements: least squares of the residuals in allowances, by Gauss and Newton. What shift is ordinary
 * counts as one more, weak measurement, so that there is an answer where the others leave it open.
 */
final class Fitting {
    private static final double ORDINARY_SHIFT = 0.5;
    private static final double MOST_SHIFT = 1.2;
    private static final double MOST_HELIX_DEG = 50;
    private static final double STEP = 1e-4;
    private static final int STEPS = 12;

    private final BenchGear bench;
    private final boolean straight;
    private final double helixDeg;

    Fitting(BenchGear bench, RolledHelix helix) {
        this.bench = bench;
        straight = helix.isStraight();
        helixDeg = helix.measured();
    }

    /** The best gear of this kind; none where nothing ordinary comes near. */
    Optional<InvoluteGear> best(int teeth, double moduleMm, double pressureAngleDeg) {
        InvoluteGear gear =
                InvoluteGear.of(bench.form(), teeth, moduleMm, pressureAngleDeg, straight ? 0 : helixDeg, 0);
        if (!isInReach(gear)) {
            return Optional.empty();
        }
        for (int step = 0; step < STEPS; step++) {
            double[] shares = shares(gear);
            InvoluteGear next = straight ? shifted(gear, shares) : turned(gear, shares);
            double moved = Math.abs(next.shift() - gear.shift()) + Math.abs(next.helixDeg() - gear.helixDeg());
            gear = next;
            if (moved < 1e-7) {
                break;
            }
        }
        return Math.abs(gear.shift()) < MOST_SHIFT ? Optional.of(gear) : Optional.empty();
    }

    static List<Residual> residuals(BenchGear bench, InvoluteGear gear) {
        List<Residual> residuals = new ArrayList<>();
        for (Measurement measurement : bench.measurements()) {
            residuals.add(new Residual(measurement, measurement.computed(gear).orElse(Double.NaN)));
        }
        return residuals;
    }

    /** Whether each measurement lies between what the utmost shifts give, with room for another helix. */
    private boolean isInReach(InvoluteGear gear) {
        InvoluteGear thin = gear.withShift(-MOST_SHIFT);
        InvoluteGear thick = gear.withShift(MOST_SHIFT);
        for (Measurement measurement : bench.measurements()) {
            if (measurement instanceof RolledHelix || measurement instanceof PinMeasure) {
                continue;
            }
            double one = measurement.computed(thin).orElse(0);
            double other = measurement.computed(thick).orElse(Double.POSITIVE_INFINITY);
            double room = measurement.allowance() + (straight ? 0 : 0.1 * measurement.measured());
            if (measurement.measured() < Math.min(one, other) - room
                    || measurement.measured() > Math.max(one, other) + room) {
                return false;
            }
        }
        return true;
    }

    private InvoluteGear shifted(InvoluteGear gear, double[] shares) {
        double[] moved = shares(gear.withShift(gear.shift() + STEP));
        double slopes = 0;
        double wanted = 0;
        for (int index = 0; index < shares.length; index++) {
            double slope = (moved[index] - shares[index]) / STEP;
            slopes += slope * slope;
            wanted += slope * shares[index];
        }
        return with(gear, gear.shift() - wanted / slopes, gear.helixDeg());
    }

    private InvoluteGear turned(InvoluteGear gear, double[] shares) {
        double[] moved = shares(gear.withShift(gear.shift() + STEP));
        double[] turned = shares(like(gear, gear.shift(), gear.helixDeg() + STEP));
        double shiftShift = 0;
        double shiftHelix = 0;
        double helixHelix = 0;
        double shiftWanted = 0;
        double helixWanted = 0;
        for (int index = 0; index < shares.length; index++) {
            double byShift = (moved[index] - shares[index]) / STEP;
            double byHelix = (turned[index] - shares[index]) / STEP;
            shiftShift += byShift * byShift;
            shiftHelix += byShift * byHelix;
            helixHelix += byHelix * byHelix;
            shiftWanted += byShift * shares[index];
            helixWanted += byHelix * shares[index];
        }
        double determinant = shiftShift * helixHelix - shiftHelix * shiftHelix;
        return with(
                gear,
                gear.shift() - (helixHelix * shiftWanted - shiftHelix * helixWanted) / determinant,
                gear.helixDeg() - (shiftShift * helixWanted - shiftHelix * shiftWanted) / determinant);
    }

    /** Kept to where there are gears, however far the step goes. */
    private static InvoluteGear with(InvoluteGear gear, double shift, double helixDeg) {
        return like(
                gear,
                Math.min(2 * MOST_SHIFT, Math.max(-2 * MOST_SHIFT, shift)),
                Math.min(MOST_HELIX_DEG, Math.max(0, helixDeg)));
    }

    private static InvoluteGear like(InvoluteGear gear, double shift, double helixDeg) {
        return InvoluteGear.of(gear.form(), gear.teeth(), gear.moduleMm(), gear.pressureAngleDeg(), helixDeg, shift);
    }

    /** A measurement that has no answer on this gear says nothing here; it is told apart afterwards. */
    private double[] shares(InvoluteGear gear) {
        double[] shares = new double[bench.measurements().size() + 1];
        for (int index = 0; index < shares.length - 1; index++) {
            Measurement measurement = bench.measurements().get(index);
            double computed = measurement.computed(gear).orElse(measurement.measured());
            shares[index] = straight && measurement instanceof RolledHelix
                    ? 0
                    : (measurement.measured() - computed) / measurement.allowance();
        }
        shares[shares.length - 1] = gear.shift() / ORDINARY_SHIFT;
        return shares;
    }
}
