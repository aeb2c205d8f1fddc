package org.layshaft.web.desk;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.TopSpeed;
import org.layshaft.engine.stated.Telling;

/** What is said of a box on the road, alike on the page and on the command line. */
public final class RoadWording {
    private RoadWording() {}

    /** @param error what the speedometer reads too much, in per cent; less than 0 for too little */
    public static String speedometer(Telling<Fraction> error) {
        return error.map(percent -> percent.isZero()
                        ? "The speedometer reads as it did before the change."
                        : "The speedometer, if it read truly before the change, now reads %s per cent too %s."
                                .formatted(
                                        Decimals.rounded(percent.absolute(), 1), percent.signum() > 0 ? "high" : "low"))
                .value()
                .orElseGet(() -> "What the change does to the speedometer %s."
                        .formatted(error.whyNot().orElseThrow()));
    }

    /** Why it goes no faster, as a clause. */
    public static String endOf(TopSpeed top) {
        return top.endedBy() == TopSpeed.EndedBy.RESISTANCE
                ? "there all the effort goes into resistance"
                : "there the engine's torque curve ends";
    }
}
