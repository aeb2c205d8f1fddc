package org.layshaft.engine.fit.check;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;

/** Two gears in mesh at the smallest and at the largest distance that the case allows. */
record Mated(InvolutePair near, InvolutePair far) {
    private static final double ALIKE = 1e-6;

    /** None where the teeth are not of one kind, or the axes stand too near for any contact: other checks tell that. */
    static Optional<Mated> of(InvoluteGear first, InvoluteGear second, Axes axes) {
        if (!canMesh(first, second)) {
            return Optional.empty();
        }
        Optional<InvolutePair> near = InvolutePair.at(first, second, axes.smallestMm());
        return near.map(pair -> new Mated(pair, new InvolutePair(first, second, axes.largestMm())));
    }

    /** Whether there is any distance at which two such gears could run together. */
    static boolean canMesh(InvoluteGear first, InvoluteGear second) {
        return alike(first.moduleMm(), second.moduleMm())
                && alike(first.pressureAngleDeg(), second.pressureAngleDeg())
                && alike(first.helixDeg(), second.helixDeg())
                && !(first.isInternal() && second.isInternal());
    }

    double least(ToDoubleFunction<InvolutePair> figure) {
        return Math.min(figure.applyAsDouble(near), figure.applyAsDouble(far));
    }

    private static boolean alike(double one, double other) {
        return Math.abs(one - other) <= ALIKE * Math.min(one, other) || one == other;
    }
}
