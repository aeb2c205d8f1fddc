package org.layshaft.engine.involute;

import java.util.function.DoubleUnaryOperator;

/**
 * Where the fillet that a rack leaves at the root of a tooth runs into the involute. In the transverse section the
 * rounded corner of the rack is part of an ellipse.
 */
final class GeneratedRoot {
    private static final int HALVINGS = 50;

    private final InvoluteGear gear;
    private final double pitchRadius;
    private final double baseRadius;
    private final double cornerRadius;
    private final double cornerAlong;
    private final double cornerHeight;

    private GeneratedRoot(InvoluteGear gear) {
        this.gear = gear;
        double module = gear.moduleMm();
        double normalAngle = gear.normalAngle();
        pitchRadius = gear.referenceMm() / 2;
        baseRadius = gear.baseMm() / 2;
        cornerRadius = gear.rack().filletRadius() * module;
        double straight = gear.rack().straightDedendum(normalAngle) * module;
        cornerAlong = Math.PI * module / 4 - straight * Math.tan(normalAngle) - cornerRadius * Math.cos(normalAngle);
        cornerHeight = (gear.shift() - gear.rack().dedendum()) * module + cornerRadius;
    }

    static double formMm(InvoluteGear gear) {
        double straight = gear.rack().straightDedendum(gear.normalAngle());
        if (gear.isInternal()) {
            return gear.referenceMm() + 2 * gear.moduleMm() * (straight + gear.shift());
        }
        double sine = Math.sin(gear.transverseAngle());
        double curvature = gear.referenceMm() / 2 * sine - (straight - gear.shift()) * gear.moduleMm() / sine;
        return curvature < 0 ? new GeneratedRoot(gear).undercutFormMm() : Math.hypot(gear.baseMm(), 2 * curvature);
    }

    /** The fillet reaches into the tooth: it meets the involute somewhere above the base circle. */
    private double undercutFormMm() {
        double above = gear.normalAngle();
        double atBase =
                falling(above, Math.PI / 2, direction -> point(direction).radius() - baseRadius);
        if (intoTheTooth(atBase) <= 0) {
            return 2 * baseRadius;
        }
        return 2
                * point(falling(above, atBase, direction -> -intoTheTooth(direction)))
                        .radius();
    }

    private double intoTheTooth(double direction) {
        Point fillet = point(direction);
        double angleThere = Math.acos(Math.min(1, baseRadius / fillet.radius()));
        return fillet.fromSpace() - (Math.PI / gear.teeth() - gear.halfThickness(angleThere));
    }

    /** The point cut where the rack's surface faces this way: the line square to it passes through the pitch point. */
    private Point point(double direction) {
        double cosine = Math.cos(gear.helix());
        double along = (cornerAlong + cornerRadius * Math.cos(direction)) / cosine;
        double height = cornerHeight - cornerRadius * Math.sin(direction);
        double x = -height * cosine / Math.tan(direction);
        double y = pitchRadius + height;
        double turned = (x - along) / pitchRadius;
        return new Point(Math.hypot(x, y), Math.atan2(x, y) - turned);
    }

    private static double falling(double from, double to, DoubleUnaryOperator over) {
        double positive = from;
        double negative = to;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (positive + negative) / 2;
            if (over.applyAsDouble(middle) > 0) {
                positive = middle;
            } else {
                negative = middle;
            }
        }
        return (positive + negative) / 2;
    }

    /** @param fromSpace angle from the middle of the space, seen from the axis */
    private record Point(double radius, double fromSpace) {}
}
