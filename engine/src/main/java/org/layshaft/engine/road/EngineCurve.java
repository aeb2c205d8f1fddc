package org.layshaft.engine.road;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * Full-load torque of an engine: straight between the points, nothing outside them.
 *
 * @param points at least two, by rising speed
 */
public record EngineCurve(List<Point> points) {

    /** @param torqueNm at full load */
    public record Point(Fraction rpm, Fraction torqueNm) {}

    /** Throws {@link ImpossibleFactsException} with everything that is wrong with the points. */
    public EngineCurve {
        points = List.copyOf(points);
        Objections objections = new Objections()
                .unless(
                        points.size() >= 2,
                        "The engine's torque curve has %d points. State at least two, each with a speed and a torque.",
                        points.size());
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            objections.unless(
                    point.rpm().signum() > 0 && point.torqueNm().signum() >= 0,
                    "A point of the engine's torque curve is %s rpm, %s N·m. The speed must be more than 0, and the torque not less.",
                    Shown.decimal(point.rpm()),
                    Shown.decimal(point.torqueNm()));
            objections.unless(
                    i == 0 || points.get(i - 1).rpm().compareTo(point.rpm()) < 0,
                    "The engine's torque curve comes to %s rpm after a point that is not lower. State the points by rising speed.",
                    Shown.decimal(point.rpm()));
        }
        objections.refuse();
    }

    public Fraction slowestRpm() {
        return points.get(0).rpm();
    }

    public Fraction fastestRpm() {
        return points.get(points.size() - 1).rpm();
    }

    /** Empty outside the points. */
    public Optional<Fraction> torqueNm(Fraction rpm) {
        for (int i = 1; i < points.size(); i++) {
            Point low = points.get(i - 1);
            Point high = points.get(i);
            if (low.rpm().compareTo(rpm) <= 0 && rpm.compareTo(high.rpm()) <= 0) {
                Fraction way = rpm.minus(low.rpm()).over(high.rpm().minus(low.rpm()));
                return Optional.of(low.torqueNm().plus(way.times(high.torqueNm().minus(low.torqueNm()))));
            }
        }
        return Optional.empty();
    }
}
