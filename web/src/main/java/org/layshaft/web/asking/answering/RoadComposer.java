package org.layshaft.web.asking.answering;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing;
import org.layshaft.engine.road.Gradient;
import org.layshaft.engine.road.RoadSpeeds;
import org.layshaft.engine.road.RollingCircumference;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.road.TopSpeed;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Road;
import org.layshaft.web.asking.Given;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** What gears come to on the road, in the vehicle that is stated or with the numbers that the question gives. */
final class RoadComposer {
    private static final String HELP = "Say in the question what is missing: \"… with an axle of 4.1 on 195/65 R15\".";

    private final Facts facts;
    private final Question.OnTheRoad question;
    private final Given given;
    private final List<String> says = new ArrayList<>();

    RoadComposer(Facts facts, Question.OnTheRoad question) {
        this.facts = facts;
        this.question = question;
        this.given = question.given();
    }

    Composed compose() {
        facts.gears(question.gears());
        try {
            say();
        } catch (ImpossibleFactsException impossible) {
            throw new UnanswerableException(impossible.getMessage());
        }
        return Composed.of(says).about(question.gears());
    }

    private void say() {
        switch (question.wanted()) {
            case RPM_AT -> engineSpeeds(onRoad());
            case SPEED_AT -> roadSpeeds(onRoad());
            case PER_1000 -> perThousand(onRoad());
            case TOP -> top(vehicle());
            case STEEPEST -> steepest(vehicle());
            case STEPS -> steps();
            case AXLE_FOR -> axle();
            case SPEEDOMETER -> speedometer();
        }
    }

    private Vehicle vehicle() {
        return Vehicle.of(facts.box(), road());
    }

    private Road stated() {
        return facts.box().layout().road().orElse(Road.NOTHING);
    }

    private Road road() {
        Road road = stated();
        if (given.tyre().isPresent()) {
            road = road.withTyre(given.tyre().get());
        } else if (given.wheelMm().isPresent()) {
            road = road.withRollingCircumference(rolls(given.wheelMm().get()));
        }
        return given.axle().isEmpty()
                ? road
                : road.withAxleRatio(new BigDecimal(Given.plain(given.axle().get())));
    }

    /** Of a wheel that is told by its diameter: the full circumference, to a millimetre. */
    private static int rolls(Fraction diameterMm) {
        return (int) Math.round(Math.PI * diameterMm.toDouble());
    }

    /** The box's gears; those of the ratios that the question gives, where it gives some. */
    private RoadSpeeds onRoad() {
        Vehicle vehicle = vehicle();
        if (given.ratios().isEmpty()) {
            return vehicle.speeds();
        }
        Map<String, Fraction> ratios = new LinkedHashMap<>();
        given.ratios().forEach(ratio -> ratios.put(Given.plain(ratio) + " to 1", ratio));
        return new RoadSpeeds(
                new Gearing(ratios, given.axle().or(() -> vehicle.gearing().behind())), vehicle.tyre());
    }

    private List<String> gears(RoadSpeeds speeds) {
        return question.gears().isEmpty() || !given.ratios().isEmpty()
                ? List.copyOf(speeds.gearing().ratios().keySet())
                : question.gears();
    }

    private void engineSpeeds(RoadSpeeds speeds) {
        Fraction kmh = given.kmh()
                .orElseThrow(() -> new UnanswerableException(
                        "The road speed is missing. Give it in the question: \"rpm at 100 km/h in fifth\"."));
        for (String gear : gears(speeds)) {
            Telling<Fraction> rpm = speeds.rpmAt(gear, kmh);
            say(
                    "At %s in %s".formatted(speed(kmh), name(gear)),
                    rpm,
                    each -> "the engine turns at %s rpm".formatted(Saying.plain(each, 0)));
        }
        basis(speeds);
    }

    private void roadSpeeds(RoadSpeeds speeds) {
        Fraction rpm = given.engineRpm()
                .orElseThrow(() -> new UnanswerableException(
                        "The engine speed is missing. Give it in the question: \"how fast in third at 3000 rpm\"."));
        for (String gear : gears(speeds)) {
            say(
                    "At %s rpm in %s".formatted(Saying.plain(rpm, 0), name(gear)),
                    speeds.kmhAt(gear, rpm).map(Fraction::absolute),
                    each -> "it does " + speed(each));
        }
        basis(speeds);
        beyond(rpm);
    }

    private void perThousand(RoadSpeeds speeds) {
        for (String gear : gears(speeds)) {
            say(
                    Saying.sentence(name(gear)),
                    speeds.kmhPer1000Rpm(gear).map(Fraction::absolute),
                    each -> speed(each) + " for each 1000 rpm");
        }
        basis(speeds);
    }

    private void say(String when, Telling<Fraction> telling, Function<Fraction, String> what) {
        if (telling.value().isPresent()) {
            says.add("%s: %s.".formatted(when, what.apply(telling.value().get())));
        }
    }

    /** What it rests on, or what is missing for it. */
    private void basis(RoadSpeeds speeds) {
        String first = speeds.gearing().ratios().keySet().iterator().next();
        Telling<Fraction> any = speeds.kmhPer1000Rpm(first);
        if (any.whyNot().isPresent()) {
            says.add("%s of %s %s."
                    .formatted(
                            Saying.sentence("the speed"),
                            facts.box().layout().name(),
                            any.whyNot().get()));
            says.add(HELP);
            return;
        }
        String axle = speeds.gearing()
                .behind()
                .filter(behind -> !behind.equals(Fraction.ONE))
                .map(behind -> "an axle of %s, and ".formatted(Given.plain(behind)))
                .orElse("");
        RollingCircumference rolls = speeds.tyre().value().orElseThrow();
        says.add("This rests on %swheels that roll %d mm in one turn (%s), nothing slipping."
                .formatted(
                        axle,
                        rolls.mm(),
                        given.wheelMm().isPresent() && given.tyre().isEmpty()
                                ? "%s mm across, its full circumference"
                                        .formatted(Given.plain(given.wheelMm().get()))
                                : rolls.basis()));
    }

    private void beyond(Fraction rpm) {
        vehicle()
                .pull()
                .engine()
                .filter(curve ->
                        rpm.compareTo(curve.fastestRpm()) > 0 && given.ratios().isEmpty())
                .ifPresent(curve ->
                        says.add("Its engine's torque is stated up to %s rpm only; whether it may turn faster is not."
                                .formatted(Saying.plain(curve.fastestRpm(), 0))));
    }

    private void top(Vehicle vehicle) {
        Telling<Optional<TopSpeed>> top = question.gears().isEmpty()
                ? vehicle.pull().topSpeed()
                : vehicle.pull().topSpeed(question.gears().get(0));
        says.add(top.map(each ->
                        each.map(this::top).orElse("No speed is kept up on the level that the engine's curve covers."))
                .value()
                .orElseGet(() -> "The top speed of %s %s."
                        .formatted(facts.box().layout().name(), top.whyNot().orElseThrow())));
        if (top.value().isEmpty()) {
            says.add("These facts stand under \"road\" in the file of the layout.");
        }
    }

    private String top(TopSpeed top) {
        String end = top.endedBy() == TopSpeed.EndedBy.RESISTANCE
                ? "there all the effort goes into resistance"
                : "there the engine's torque curve ends";
        return String.format(
                Locale.ROOT,
                "The top speed on the level is %.1f km/h (%.1f mph), in %s: %s.",
                top.kmh(),
                top.kmh() / SpeedUnit.MPH.toKmh(Fraction.ONE).toDouble(),
                Names.gearName(top.gear()),
                end);
    }

    private void steepest(Vehicle vehicle) {
        Optional<String> missing = Optional.empty();
        for (String gear : gears(vehicle.speeds())) {
            Telling<Gradient> steepest = vehicle.pull().steepest(gear);
            steepest.value()
                    .ifPresent(hill ->
                            says.add("%s climbs %s at full load.".formatted(Saying.sentence(name(gear)), hill(hill))));
            missing = missing.or(steepest::whyNot);
        }
        missing.ifPresent(why ->
                says.add("What %s climbs %s.".formatted(facts.box().layout().name(), why)));
        if (missing.isEmpty()) {
            says.add("The grip of the tyres is not looked into.");
        }
    }

    private static String hill(Gradient gradient) {
        if (gradient instanceof Gradient.Slope slope) {
            return String.format(Locale.ROOT, "%.1f per cent", slope.percent());
        }
        return gradient instanceof Gradient.AnySlope ? "whatever the tyres hold on" : "no hill";
    }

    private void steps() {
        Gearing gearing = vehicle().gearing();
        List<String> gears = question.gears();
        if (gears.size() > 1) {
            step(gearing, gears.get(0), gears.get(1));
            return;
        }
        gearing.steps().stream()
                .filter(step -> gears.isEmpty() || gears.contains(step.lower()))
                .forEach(step -> step(gearing, step.lower(), step.higher()));
    }

    private void step(Gearing gearing, String from, String to) {
        Fraction part = gearing.rpmAfterShift(from, to, Fraction.ONE);
        Fraction change = part.minus(Fraction.ONE).times(Fraction.of(100));
        String at = given.engineRpm()
                .map(rpm -> ", from %s to %s rpm"
                        .formatted(Saying.plain(rpm, 0), Saying.plain(gearing.rpmAfterShift(from, to, rpm), 0)))
                .orElse("");
        says.add("From %s to %s the engine speed %s by %s per cent%s."
                .formatted(
                        name(from),
                        name(to),
                        change.signum() < 0 ? "drops" : "rises",
                        Saying.plain(change.absolute(), 1),
                        at));
    }

    private void axle() {
        Fraction before = given.axle()
                .or(() -> stated().axleRatio().map(Fraction::of))
                .orElseThrow(() -> new UnanswerableException(
                        "The axle ratio is missing. Give it in the question: \"… on a 2.88 axle\"."));
        List<Fraction> ratios = given.ratios().stream()
                .filter(ratio -> !ratio.equals(Fraction.ONE))
                .toList();
        if (ratios.isEmpty()) {
            throw new UnanswerableException(
                    "The ratio of the new gear is missing. Give it in the question: \"… with a 0.8 overdrive\".");
        }
        Fraction after = before.over(ratios.get(0));
        says.add(
                "With %s to 1 instead of direct drive an axle of %s gives the same engine speed at the same road speed: %s / %s."
                        .formatted(
                                Given.plain(ratios.get(0)),
                                Saying.plain(after, 3),
                                Given.plain(before),
                                Given.plain(ratios.get(0))));
        says.add("The nearest that is made has to be looked up; what it is off by, the engine speed is off by too.");
    }

    private void speedometer() {
        String box = facts.box().layout().name();
        Optional<Road.SpeedRead> read = stated().speedRead();
        says.add(read.map(place -> "%s has its speed read %s.".formatted(box, place(place)))
                .orElse("Where %s has its speed read is not stated.".formatted(box)));
        says.add(read.map(
                        place -> place == Road.SpeedRead.GEARBOX_OUTPUT
                                ? "That is before the axle: another axle ratio makes it read wrong, and so do other tyres."
                                : "That is behind the final drive: another final drive leaves it as it was; other tyres do not.")
                .orElse("At the box's output another axle ratio upsets it; behind the final drive only tyres do."));
        boolean axleMatters = given.axle().isPresent()
                && read.filter(place -> place == Road.SpeedRead.GEARBOX_OUTPUT).isPresent();
        if (axleMatters || given.tyre().isPresent() || given.wheelMm().isPresent()) {
            Telling<Fraction> error = SpeedometerChange.between(Vehicle.of(facts.box(), stated()), vehicle())
                    .then(SpeedometerChange::errorPercent);
            says.add(error.map(RoadComposer::off)
                    .value()
                    .orElseGet(() -> "How far it is off then %s."
                            .formatted(error.whyNot().orElseThrow())));
        }
    }

    private static String off(Fraction percent) {
        return percent.isZero()
                ? "It then reads as it did before."
                : "If it read truly before, it then reads %s per cent too %s."
                        .formatted(Saying.plain(percent.absolute(), 1), percent.signum() > 0 ? "high" : "low");
    }

    private static String place(Road.SpeedRead place) {
        return switch (place) {
            case GEARBOX_OUTPUT -> "at the output of the gearbox";
            case DIFFERENTIAL -> "at the differential";
            case WHEELS -> "at the wheels";
        };
    }

    private String name(String gear) {
        return given.ratios().isEmpty() ? Names.gearName(gear) : gear;
    }

    /** In both units, that of the question first. */
    private String speed(Fraction kmh) {
        SpeedUnit first = given.unit().orElse(SpeedUnit.KMH);
        SpeedUnit second = first == SpeedUnit.KMH ? SpeedUnit.MPH : SpeedUnit.KMH;
        return "%s %s (%s %s)"
                .formatted(
                        Saying.plain(first.fromKmh(kmh.absolute()), 1),
                        first.sign(),
                        Saying.plain(second.fromKmh(kmh.absolute()), 1),
                        second.sign());
    }
}
