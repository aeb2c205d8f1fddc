package org.layshaft.engine.involute;

import java.util.function.ToDoubleFunction;

/**
 * Two transverse sections rolled on each other by trying: the points of one flank, made by unwinding a string, are held
 * against the other flank to find how far the second gear can be turned. No relation of the gears' theory is used but
 * what defines a tooth: its base circle, and its thickness at the reference circle as the rack leaves it.
 *
 * <p>The first gear stands at the origin, the second to the right of it, or for a ring around it with its centre to the
 * left, so that contact is always near the positive x axis. A tooth of the first gear in the middle of the picture pushes
 * upward.
 */
final class RolledPair {

    private static final double NEAR = 1e-6;

    private final Section first;
    private final Section second;
    private final double centre;
    private final boolean ring;

    RolledPair(InvoluteGear external, InvoluteGear other, double centreMm) {
        first = new Section(external);
        second = new Section(other);
        centre = centreMm;
        ring = other.isInternal();
    }

    /** How far the second gear can be rocked, as an arc of its working circle. */
    double backlashMm() {
        double toothUp = secondTooth(0);
        // the lower flank mirrors the upper one, the first gear's tooth standing in the middle
        double rocked = ring
                ? 2 * Math.PI / second.teeth - 2 * toothUp
                : 2 * toothUp - 2 * Math.PI + 2 * Math.PI / second.teeth;
        return rocked * workingRadius(second);
    }

    /** Where the middle of the second gear's tooth above stands while the first, turned by so much, touches it. */
    double secondTooth(double turn) {
        double teethRatio = (double) first.teeth / second.teeth;
        return touch(atPitchPoint()).turned() + (ring ? 1 : -1) * (turn - atPitchPoint()) * teethRatio;
    }

    /** How far the second gear turns, about the pitch point, while the first turns by so much. */
    double follows(double turn) {
        return touch(atPitchPoint() + turn / 2).turned()
                - touch(atPitchPoint() - turn / 2).turned();
    }

    /** The turn of the first gear through which one pair of flanks touches, over the angle between its teeth. */
    double contactRatio() {
        double fromForm = turnWhere(Touch::firstRoll, first.roll(first.formRadius));
        double fromTip = touch(fromForm).secondRoll();
        double secondTip = second.roll(second.tipRadius);
        boolean beyondTip = ring ? fromTip < secondTip : fromTip > secondTip;
        double start = beyondTip ? turnWhere(Touch::secondRoll, secondTip) : fromForm;
        double toForm = turnWhere(Touch::secondRoll, second.roll(second.formRadius));
        double firstTip = first.roll(first.tipRadius);
        double end = touch(toForm).firstRoll() > firstTip ? turnWhere(Touch::firstRoll, firstTip) : toForm;
        return Math.max(0, end - start) * first.teeth / (2 * Math.PI);
    }

    /** The turn at which the flank passes through the pitch point. */
    private double atPitchPoint() {
        return -first.halfTooth(workingRadius(first));
    }

    private double workingRadius(Section section) {
        return centre * section.teeth / (second.teeth + (ring ? -1 : 1) * first.teeth);
    }

    /** By one slope, until it comes no nearer: how far along a flank contact has come is all but straight in the turn. */
    private double turnWhere(ToDoubleFunction<Touch> roll, double wanted) {
        double best = atPitchPoint();
        double bestError = roll.applyAsDouble(touch(best)) - wanted;
        double now = best + 0.01;
        double error = roll.applyAsDouble(touch(now)) - wanted;
        double slope = (error - bestError) / (now - best);
        for (int step = 0; step < 8; step++) {
            now = best - bestError / slope;
            error = roll.applyAsDouble(touch(now)) - wanted;
            if (Math.abs(error) >= Math.abs(bestError)) {
                break;
            }
            best = now;
            bestError = error;
        }
        return best;
    }

    /** With the first gear turned by so much, where the second is stopped: by halving to where the room is least. */
    private Touch touch(double turn) {
        double farOut = 1.3 * first.tipRadius;
        double low = 0;
        double high = first.roll(ring ? farOut : Math.min(farOut, centre - 0.6 * second.baseRadius));
        while (high - low > 1e-10) {
            double middle = (low + high) / 2;
            if (room(turn, middle + NEAR) > room(turn, middle - NEAR)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double roll = (low + high) / 2;
        double least = room(turn, roll);
        return new Touch(ring ? -least : least, roll, second.roll(seen(turn, roll).radius));
    }

    /** How far, as an angle, the second gear's tooth could come before its flank meets this point of the first's. */
    private double room(double turn, double roll) {
        Seen seen = seen(turn, roll);
        double outside = second.baseRadius - seen.radius;
        double flank = second.halfTooth(Math.max(second.baseRadius, seen.radius));
        double room = ring ? -(seen.angle + flank) : seen.angle - flank;
        return outside > 0 ? room + 1 + outside / second.baseRadius : room;
    }

    private Seen seen(double turn, double roll) {
        double radius = first.baseRadius * Math.hypot(1, roll);
        double angle = turn + first.halfTooth(radius);
        double x = radius * Math.cos(angle);
        double y = radius * Math.sin(angle);
        return ring
                ? new Seen(Math.hypot(x + centre, y), Math.atan2(y, x + centre))
                : new Seen(Math.hypot(centre - x, y), Math.PI - Math.atan2(y, centre - x));
    }

    /** A point as seen from the second gear's axis. */
    private record Seen(double radius, double angle) {}

    /** @param turned where the middle of the second gear's tooth stands */
    private record Touch(double turned, double firstRoll, double secondRoll) {}
}
