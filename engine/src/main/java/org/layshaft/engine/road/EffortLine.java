package org.layshaft.engine.road;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.layshaft.engine.road.TopSpeed.EndedBy;

/**
 * Tractive effort over road speed in one gear, in straight pieces.
 *
 * @param points at least two, by rising speed
 */
record EffortLine(List<EffortPoint> points) {

    /** The highest speed at which the effort is no less than the resistance on the level. */
    Optional<TopSpeed> topSpeed(String gear, HeldBack held) {
        EffortPoint last = points.get(points.size() - 1);
        double fastest = last.kmh().toDouble();
        if (last.newtons() >= held.onTheLevelN() + held.dragN(fastest)) {
            return Optional.of(new TopSpeed(gear, fastest, EndedBy.END_OF_CURVE));
        }
        for (int i = points.size() - 1; i > 0; i--) {
            OptionalDouble balance = piece(i).highestBalance(held);
            if (balance.isPresent()) {
                return Optional.of(new TopSpeed(gear, balance.getAsDouble(), EndedBy.RESISTANCE));
            }
        }
        return Optional.empty();
    }

    /** The most that is left of the effort at any speed once drag is taken off, in N. */
    double mostLeftN(HeldBack held) {
        return IntStream.range(1, points.size())
                .mapToDouble(i -> piece(i).mostLeftN(held))
                .max()
                .orElseThrow();
    }

    private Piece piece(int end) {
        return Piece.between(points.get(end - 1), points.get(end));
    }

    /** One straight piece: start + rise · speed, from one speed to another. */
    private record Piece(double from, double to, double start, double rise) {

        static Piece between(EffortPoint low, EffortPoint high) {
            double from = low.kmh().toDouble();
            double to = high.kmh().toDouble();
            double rise = (high.newtons() - low.newtons()) / (to - from);
            return new Piece(from, to, low.newtons() - rise * from, rise);
        }

        /** The highest speed at which effort and resistance are equal: a quadratic equation. */
        OptionalDouble highestBalance(HeldBack held) {
            double drag = held.dragPerKmhSquared();
            double under = rise * rise + 4 * drag * (start - held.onTheLevelN());
            double speed = (rise + Math.sqrt(under)) / (2 * drag);
            // a balance just where two pieces join must not fall between them
            double margin = 1e-12 * to;
            return under >= 0 && speed >= from - margin && speed <= to + margin
                    ? OptionalDouble.of(speed)
                    : OptionalDouble.empty();
        }

        double mostLeftN(HeldBack held) {
            double turningPoint = rise / (2 * held.dragPerKmhSquared());
            double best = Math.min(Math.max(turningPoint, from), to);
            return start + rise * best - held.dragN(best);
        }
    }
}
