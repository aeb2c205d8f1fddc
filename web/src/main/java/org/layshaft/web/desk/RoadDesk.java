package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing;
import org.layshaft.engine.road.Resistance;
import org.layshaft.engine.road.RoadSpeeds;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.web.desk.MeasureSystem.Pound;
import org.layshaft.web.desk.RoadAnswer.Against;
import org.layshaft.web.desk.RoadAnswer.GearPull;
import org.layshaft.web.desk.RoadAnswer.Revs;
import org.layshaft.web.desk.RoadAnswer.Tooth;

/** Says what every gear of a box comes to on the road, in the vehicle that is stated or told. Thread-safe. */
public final class RoadDesk {
    private static final String NUMBER = "[0-9]{1,7}(?:\\.[0-9]{1,6})?";
    private static final Pattern WITH_UNIT =
            Pattern.compile("(-?%s)\\s*(kg|lb|km/h|kmh|mph)?".formatted(NUMBER), Pattern.CASE_INSENSITIVE);
    private static final Pattern REVS = Pattern.compile("(%s)\\s*(?:-|–|to)\\s*(%s)".formatted(NUMBER, NUMBER));
    private static final Pattern POINT = Pattern.compile("(%s)\\s*[ :]\\s*(%s)".formatted(NUMBER, NUMBER));
    private static final Pattern POUND_FEET = Pattern.compile("(.*?)\\s*lb[ ·*-]?ft\\s*", Pattern.CASE_INSENSITIVE);
    private static final int MOST_POINTS = 40;
    /** Exact enough for a figure that was written in other units. */
    private static final int DECIMALS = 6;

    private final Function<Layout, Box> boxes;
    private final Function<Optional<String>, Layout> layouts;

    public RoadDesk(Desk desk) {
        this(
                desk::box,
                id -> id.map(desk::layout)
                        .orElseGet(() ->
                                desk.knowledge().layouts().values().iterator().next()));
    }

    /**
     * @param layouts the layout of this id, or the first
     */
    public RoadDesk(Function<Layout, Box> boxes, Function<Optional<String>, Layout> layouts) {
        this.boxes = boxes;
        this.layouts = layouts;
    }

    /** Throws {@link BadInputException} with everything that cannot be used. */
    public RoadAnswer drive(RoadRequest request) {
        WrittenNumbers written = new WrittenNumbers();
        Optional<Layout> layout = written.unlessRefused(() -> layouts.apply(request.layout()));
        Optional<MeasureSystem> units = written.unlessRefused(() -> MeasureSystem.called(request.units()));
        Road stated = layout.flatMap(Layout::road).orElse(Road.NOTHING);
        Road told = told(request, stated, written);
        Optional<Optional<Revs>> revs =
                written.unlessRefused(() -> request.revs().map(RoadDesk::revs));
        Optional<Fraction> kmh = units.flatMap(
                system -> withUnit("road speed", request.at(), system.speed().sign(), "60", written)
                        .filter(speed -> moreThanNothing(speed, request, written)));
        Optional<Box> box = layout.map(boxes);
        Optional<Vehicle> vehicle = box.flatMap(each -> written.unlessRefused(() -> Vehicle.of(each, told)));
        written.refuse();
        return answer(request, box.orElseThrow(), units.orElseThrow(), vehicle.orElseThrow(), revs.orElseThrow(), kmh);
    }

    private static boolean moreThanNothing(Fraction speed, RoadRequest request, WrittenNumbers written) {
        if (speed.signum() > 0) {
            return true;
        }
        written.add(new BadInputException(
                UNFIT,
                "The road speed is %s. Give one of more than 0."
                        .formatted(request.at().orElseThrow().strip())));
        return false;
    }

    private static RoadAnswer answer(
            RoadRequest request,
            Box box,
            MeasureSystem units,
            Vehicle vehicle,
            Optional<Revs> told,
            Optional<Fraction> kmh) {
        Vehicle stated = Vehicle.of(box, box.layout().road().orElse(Road.NOTHING));
        boolean otherGearing =
                !stated.gearing().equals(vehicle.gearing()) || !stated.tyre().equals(vehicle.tyre());
        Telling<Revs> revs = Telling.of(
                told.or(() -> vehicle.pull().engine().map(curve -> new Revs(curve.slowestRpm(), curve.fastestRpm()))),
                "the engine's speed range");
        return new RoadAnswer(
                box,
                units,
                request.told().stream().anyMatch(Optional::isPresent)
                        || request.revs().isPresent(),
                vehicle,
                RoadTable.of(vehicle, kmh),
                otherGearing
                        ? Optional.of(SpeedometerChange.between(stated, vehicle).then(SpeedometerChange::errorPercent))
                        : Optional.empty(),
                revs,
                teeth(vehicle.speeds(), revs),
                pulls(vehicle),
                against(vehicle.pull().resistance()));
    }

    private static Telling<List<Tooth>> teeth(RoadSpeeds speeds, Telling<Revs> revs) {
        return revs.then(range -> Telling.all(byFallingRatio(speeds.gearing()).stream()
                        .map(gear -> speeds.kmhAt(gear, range.highestRpm()))
                        .toList())
                .map(ends -> teeth(speeds.gearing(), range, ends)));
    }

    private static List<Tooth> teeth(Gearing gearing, Revs revs, List<Fraction> ends) {
        List<String> gears = byFallingRatio(gearing);
        List<Tooth> teeth = new ArrayList<>();
        for (int i = 0; i < gears.size(); i++) {
            Fraction from = i == 0
                    ? revs.lowestRpm()
                    : gearing.rpmAfterShift(gears.get(i - 1), gears.get(i), revs.highestRpm());
            Fraction fromKmh = ends.get(i).times(from).over(revs.highestRpm());
            teeth.add(new Tooth(gears.get(i), fromKmh, ends.get(i), from, revs.highestRpm()));
        }
        return List.copyOf(teeth);
    }

    private static Telling<List<GearPull>> pulls(Vehicle vehicle) {
        return Telling.all(forward(vehicle.gearing()).stream()
                .map(gear -> vehicle.pull().effort(gear).map(points -> new GearPull(gear, points)))
                .toList());
    }

    private static List<String> forward(Gearing gearing) {
        return gearing.ratios().entrySet().stream()
                .filter(gear -> gear.getValue().signum() > 0)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The way up, whatever levers it takes; of gears that differ in nothing but a lock, the first. */
    private static List<String> byFallingRatio(Gearing gearing) {
        Map<Fraction, String> byRatio = new TreeMap<>(Comparator.reverseOrder());
        forward(gearing).forEach(gear -> byRatio.putIfAbsent(gearing.ratios().get(gear), gear));
        return List.copyOf(byRatio.values());
    }

    private static Telling<Against> against(Resistance resistance) {
        return resistance
                .weightN()
                .with(resistance.rolling(), Fraction::times)
                .with(
                        resistance.dragPerKmhSquared(),
                        (rolling, drag) -> new Against(rolling.toDouble(), drag.toDouble()));
    }

    /** What the layout states, and over it what is told. */
    private static Road told(RoadRequest request, Road stated, WrittenNumbers written) {
        Optional<Integer> rolls = written.whole("rolling circumference", request.rolls(), "1985");
        Road on = request.tyre().map(String::strip).map(stated::withTyre).orElse(stated);
        Road rolling = rolls.map(on::withRollingCircumference).orElse(on);
        Optional<List<Road.EnginePoint>> engine = written.unlessRefused(
                () -> request.engine().map(RoadDesk::engine).orElse(stated.engine()));
        return new Road(
                rolling.tyre(),
                rolling.rollingCircumferenceMm(),
                rolling.dynamicFactor(),
                decimal("axle ratio", request.axle(), "4.1", written).or(stated::axleRatio),
                decimal("efficiency", request.efficiency(), "0.92", written).or(stated::efficiency),
                withUnit("mass", request.mass(), "kg", "1450", written)
                        .map(kg -> Decimals.rounded(kg, DECIMALS))
                        .or(stated::massKg),
                decimal("rolling coefficient", request.rolling(), "0.013", written)
                        .or(stated::rollingCoefficient),
                decimal("drag area", request.drag(), "0.7", written).or(stated::dragAreaM2),
                decimal("air density", request.air(), "1.2", written).or(stated::airDensityKgM3),
                engine.orElse(List.of()),
                stated.speedRead());
    }

    private static Optional<BigDecimal> decimal(
            String name, Optional<String> text, String like, WrittenNumbers written) {
        return written.number(name, text, like).map(number -> Decimals.rounded(number, DECIMALS));
    }

    /** A number in kg or km/h, whatever unit it was written in. */
    private static Optional<Fraction> withUnit(
            String name, Optional<String> text, String usual, String like, WrittenNumbers written) {
        return text.map(String::strip).flatMap(each -> {
            Matcher matcher = WITH_UNIT.matcher(each);
            boolean ofMass = usual.equals("kg");
            String unit = matcher.matches() && matcher.group(2) != null
                    ? matcher.group(2).toLowerCase(Locale.ROOT)
                    : usual;
            if (!matcher.matches() || ofMass != (unit.equals("kg") || unit.equals("lb"))) {
                written.add(new BadInputException(
                        MALFORMED,
                        "The %s \"%s\" cannot be read. Write it like this: %s, or with its unit: %s %s"
                                .formatted(name, each, like, like, ofMass ? "lb" : "mph")));
                return Optional.empty();
            }
            Fraction number = Fraction.of(new BigDecimal(matcher.group(1)));
            return Optional.of(
                    switch (unit) {
                        case "lb" -> number.times(Pound.KG);
                        case "mph" -> SpeedUnit.MPH.toKmh(number);
                        default -> number;
                    });
        });
    }

    private static Revs revs(String written) {
        Matcher matcher = REVS.matcher(written.strip());
        if (!matcher.matches()) {
            throw new BadInputException(
                    MALFORMED,
                    "The engine's speed range \"%s\" cannot be read. Write the lowest and the highest in rpm: 900-4000"
                            .formatted(written.strip()));
        }
        Fraction lowest = Fraction.of(new BigDecimal(matcher.group(1)));
        Fraction highest = Fraction.of(new BigDecimal(matcher.group(2)));
        if (lowest.signum() <= 0 || lowest.compareTo(highest) >= 0) {
            throw new BadInputException(
                    UNFIT,
                    "The engine's speed range is %s. It must begin above 0 and end higher than it begins: 900-4000"
                            .formatted(written.strip()));
        }
        return new Revs(lowest, highest);
    }

    private static List<Road.EnginePoint> engine(String written) {
        Matcher inPoundFeet = POUND_FEET.matcher(written);
        boolean poundFeet = inPoundFeet.matches();
        String[] points = (poundFeet ? inPoundFeet.group(1) : written).strip().split("\\s*[,;]\\s*");
        if (points.length > MOST_POINTS) {
            throw new BadInputException(
                    MALFORMED,
                    "The engine's torque curve has %d points. Give at most %d.".formatted(points.length, MOST_POINTS));
        }
        List<Road.EnginePoint> curve = new ArrayList<>();
        for (String point : points) {
            Matcher matcher = POINT.matcher(point);
            if (!matcher.matches()) {
                throw new BadInputException(
                        MALFORMED,
                        "The point \"%s\" of the engine's torque curve cannot be read. Write speeds in rpm and torques in N·m: 1000 150, 1800 240"
                                .formatted(point));
            }
            BigDecimal torque = new BigDecimal(matcher.group(2));
            curve.add(new Road.EnginePoint(
                    new BigDecimal(matcher.group(1)),
                    poundFeet ? Decimals.rounded(Fraction.of(torque).times(Pound.FOOT_NM), DECIMALS) : torque));
        }
        return curve;
    }
}
