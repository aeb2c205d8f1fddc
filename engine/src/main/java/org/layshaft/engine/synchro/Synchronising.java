package org.layshaft.engine.synchro;

import java.util.OptionalDouble;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * Bringing what turns freely to the speed of a shaft that keeps its own.
 *
 * @param inertiaKgM2 of all that is brought along, seen at the cone
 * @param differenceRpm between the two before
 * @param dragNm drag that works against it; below 0 where the drag helps, as in an upshift
 */
public record Synchronising(double inertiaKgM2, double differenceRpm, double dragNm) {

    public Synchronising {
        new Objections()
                .unless(inertiaKgM2 > 0, "The inertia is %s kg m2. It must be more than 0.", Shown.decimal(inertiaKgM2))
                .unless(
                        differenceRpm >= 0,
                        "The speed difference is %s rpm. It must not be below 0; the drag's sign tells which way.",
                        Shown.decimal(differenceRpm))
                .refuse();
    }

    public static Synchronising withoutDrag(double inertiaKgM2, double differenceRpm) {
        return new Synchronising(inertiaKgM2, differenceRpm, 0);
    }

    /** How long it takes a cone torque; never where the drag is as strong. */
    public OptionalDouble timeS(double torqueNm) {
        double left = torqueNm - dragNm;
        return left > 0 ? OptionalDouble.of(inertiaKgM2 * difference() / left) : OptionalDouble.empty();
    }

    /** What becomes heat at the cone meanwhile. */
    public OptionalDouble heatJ(double torqueNm) {
        OptionalDouble time = timeS(torqueNm);
        return time.isPresent()
                ? OptionalDouble.of(torqueNm * difference() * time.getAsDouble() / 2)
                : OptionalDouble.empty();
    }

    /** The cone torque that does it in this time. */
    public double torqueNm(double timeS) {
        return inertiaKgM2 * difference() / timeS + dragNm;
    }

    private double difference() {
        return differenceRpm * Math.PI / 30;
    }
}
