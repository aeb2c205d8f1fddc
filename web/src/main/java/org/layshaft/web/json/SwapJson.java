package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.Comparison;
import org.layshaft.engine.swap.GearComparison;
import org.layshaft.engine.swap.GearFigures;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.SwapAnswer;
import org.layshaft.web.desk.SwapLine;
import org.layshaft.web.desk.SwapLines;
import org.layshaft.web.desk.SwapWording;

/**
 * A box before and after a change.
 *
 * @param asked in words
 * @param serving of the set that was put in; null where none was
 * @param speedometerPercent how much too high the speedometer reads then; null where that cannot be told
 * @param namesHold whether every place of the levers gives the gear of the same name
 * @param ratios gear by gear, exactly
 * @param lines every figure, as it is shown
 */
public record SwapJson(
        String layout,
        String asked,
        List<String> says,
        ServingJson serving,
        NumberJson speedometerPercent,
        boolean namesHold,
        boolean gateHolds,
        boolean interlockHolds,
        List<RatioJson> ratios,
        List<LineJson> lines,
        List<String> cautions) {

    /**
     * What one place of the levers gives.
     *
     * @param gear its name before; null where it gave no gear
     * @param named its name after; null where it gives none any more
     */
    public record RatioJson(String gear, String named, NumberJson before, NumberJson after) {
        static RatioJson of(GearComparison gear) {
            return new RatioJson(
                    gear.before().map(GearFigures::gear).orElse(null),
                    gear.after().map(GearFigures::gear).orElse(null),
                    gear.before().map(GearFigures::ratio).map(NumberJson::of).orElse(null),
                    gear.after().map(GearFigures::ratio).map(NumberJson::of).orElse(null));
        }
    }

    /**
     * One figure.
     *
     * @param gear empty where it is about the whole
     * @param because why it cannot be told; empty where it can
     */
    public record LineJson(
            String gear, String what, String before, String after, boolean changed, List<String> because) {
        static LineJson of(SwapLine line) {
            return new LineJson(
                    line.gear(), line.what(), line.before(), line.after(), line.isChanged(), line.because());
        }
    }

    public static SwapJson of(SwapAnswer answer) {
        Comparison comparison = answer.comparison();
        Telling<Fraction> error = comparison.speedometer().then(SpeedometerChange::errorPercent);
        return new SwapJson(
                comparison.before().layout().id(),
                SwapWording.asked(answer),
                SwapWording.says(answer),
                answer.serving().map(serving -> ServingJson.of(serving, false)).orElse(null),
                error.value().map(NumberJson::of).orElse(null),
                comparison.namesHold(),
                comparison.gateHolds(),
                comparison.interlockHolds(),
                comparison.gears().stream().map(RatioJson::of).toList(),
                SwapLines.of(comparison).stream().map(LineJson::of).toList(),
                Cautions.ofParts());
    }
}
