package org.layshaft.web.json;

import java.util.List;
import java.util.function.Function;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gradient;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.road.RollingCircumference;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.road.TopSpeed;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.RoadAnswer;

/**
 * What every gear of a layout comes to on the road.
 *
 * @param speedsIn {@code km/h} or {@code mph}
 * @param topSpeed its value is null too where no gear keeps up any speed of the engine's curve
 * @param at the road speed that engine speeds are told at; null where none is asked about
 * @param upThroughTheGears what the engine does from the lowest gear to the highest, shifted up at the end of its range
 * @param pull of the forward gears with the engine at full load
 * @param speedometerPercent how much too high the speedometer reads after the change; null where nothing was changed
 */
public record RoadJson(
        String layout,
        String speedsIn,
        NumberJson at,
        ToldJson<RollingCircumference> wheels,
        List<RoadGearJson> gears,
        ToldJson<TopJson> topSpeed,
        ToldJson<NumberJson> speedometerPercent,
        ToldJson<List<ShiftJson>> upThroughTheGears,
        ToldJson<List<PullJson>> pull) {

    /**
     * What follows from what is stated.
     *
     * @param value null where it cannot be told
     * @param because why it cannot be told, in clauses
     */
    public record ToldJson<T>(T value, List<String> because) {
        static <S, T> ToldJson<T> of(Telling<S> telling, Function<S, T> shown) {
            return new ToldJson<>(telling.value().map(shown).orElse(null), telling.because());
        }
    }

    /**
     * One gear.
     *
     * @param step its ratio over that of the next higher forward gear; null where there is none
     * @param steepest gradient that full load climbs anywhere along the engine's curve
     */
    public record RoadGearJson(
            String gear,
            NumberJson ratio,
            ToldJson<NumberJson> overall,
            NumberJson step,
            ToldJson<NumberJson> speedPer1000Rpm,
            ToldJson<NumberJson> rpm,
            ToldJson<NumberJson> rpmAfterShiftUp,
            ToldJson<GradientJson> steepest) {}

    /**
     * A gradient.
     *
     * @param climbs {@code slope}; {@code any slope} where only the tyres set an end, {@code no slope} where not even a
     *     way down keeps the speed up
     * @param percent rise over level distance, times 100; null unless it is a slope
     */
    public record GradientJson(String climbs, Double percent) {
        static GradientJson of(Gradient gradient) {
            if (gradient instanceof Gradient.Slope slope) {
                return new GradientJson("slope", slope.percent());
            }
            return new GradientJson(gradient instanceof Gradient.AnySlope ? "any slope" : "no slope", null);
        }
    }

    /** @param endedBy {@code resistance}, or {@code end of curve} */
    public record TopJson(String gear, double speed, String endedBy) {}

    /** One gear from where it is taken to where it is left. */
    public record ShiftJson(
            String gear, NumberJson fromSpeed, NumberJson toSpeed, NumberJson fromRpm, NumberJson toRpm) {}

    /** Tractive effort in one gear: straight between these points. */
    public record PullJson(String gear, List<PullPointJson> points) {}

    /** @param newtons rounded to whole ones */
    public record PullPointJson(NumberJson speed, long newtons) {}

    public static RoadJson of(RoadAnswer answer) {
        Layout layout = answer.layout();
        RoadTable table = answer.table();
        SpeedUnit unit = answer.units().speed();
        return new RoadJson(
                layout.id(),
                unit.sign(),
                table.kmh().map(unit::fromKmh).map(NumberJson::of).orElse(null),
                ToldJson.of(table.tyre(), Function.identity()),
                table.rows().stream().map(row -> gear(row, unit)).toList(),
                ToldJson.of(
                        table.topSpeed(),
                        top -> top.map(speed -> top(speed, unit)).orElse(null)),
                answer.speedometer().map(RoadJson::number).orElse(null),
                ToldJson.of(
                        answer.teeth(),
                        teeth -> teeth.stream().map(tooth -> shift(tooth, unit)).toList()),
                ToldJson.of(
                        answer.pulls(),
                        pulls -> pulls.stream().map(pull -> pull(pull, unit)).toList()));
    }

    private static ShiftJson shift(RoadAnswer.Tooth tooth, SpeedUnit unit) {
        return new ShiftJson(
                tooth.gear(),
                NumberJson.of(unit.fromKmh(tooth.fromKmh())),
                NumberJson.of(unit.fromKmh(tooth.toKmh())),
                NumberJson.of(tooth.fromRpm()),
                NumberJson.of(tooth.toRpm()));
    }

    private static PullJson pull(RoadAnswer.GearPull pull, SpeedUnit unit) {
        return new PullJson(
                pull.gear(),
                pull.points().stream()
                        .map(point -> new PullPointJson(
                                NumberJson.of(unit.fromKmh(point.kmh())), Math.round(point.newtons())))
                        .toList());
    }

    private static RoadGearJson gear(RoadTable.Row row, SpeedUnit unit) {
        return new RoadGearJson(
                row.gear(),
                NumberJson.of(row.ratio()),
                number(row.overall()),
                row.step().map(step -> NumberJson.of(step.ratio())).orElse(null),
                number(row.kmhPer1000Rpm().map(unit::fromKmh)),
                row.rpm().map(RoadJson::number).orElse(null),
                row.rpmAfterShiftUp().map(RoadJson::number).orElse(null),
                ToldJson.of(row.steepest(), GradientJson::of));
    }

    private static TopJson top(TopSpeed top, SpeedUnit unit) {
        return new TopJson(
                top.gear(),
                top.kmh() / unit.toKmh(Fraction.ONE).toDouble(),
                top.endedBy() == TopSpeed.EndedBy.RESISTANCE ? "resistance" : "end of curve");
    }

    private static ToldJson<NumberJson> number(Telling<Fraction> telling) {
        return ToldJson.of(telling, NumberJson::of);
    }
}
