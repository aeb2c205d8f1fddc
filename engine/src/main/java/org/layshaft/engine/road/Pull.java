package org.layshaft.engine.road;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;
import org.layshaft.engine.stated.Telling;

/**
 * What an engine at full load does at the tyres, gear by gear, at a steady speed. The grip of the tyres is not looked
 * into.
 *
 * @param engine its torque curve, where one is stated
 * @param efficiency of everything between engine and wheels, from 0 to 1
 */
public record Pull(
        RoadSpeeds speeds, Optional<EngineCurve> engine, Optional<Fraction> efficiency, Resistance resistance) {

    /** Throws {@link ImpossibleFactsException} for an efficiency that is not between 0 and 1. */
    public Pull {
        new Objections()
                .unlessPositive(efficiency, "the efficiency")
                .unless(
                        efficiency.orElse(Fraction.ONE).compareTo(Fraction.ONE) <= 0,
                        "The efficiency is %s. It cannot be more than 1; 93 per cent is 0.93.",
                        efficiency.map(Shown::decimal).orElse(""))
                .refuse();
    }

    /** Tractive effort in N at a road speed that the engine's curve covers. */
    public Telling<Double> effortN(String gear, Fraction kmh) {
        return curve().with(atWheels(gear), (curve, wheels) -> wheels.effortN(curve, kmh))
                .then(effort -> effort);
    }

    /** Tractive effort over road speed: straight between these points, which are those of the engine's curve. */
    public Telling<List<EffortPoint>> effort(String gear) {
        return line(gear).map(EffortLine::points);
    }

    /** The gradient on which full load just keeps the speed up. */
    public Telling<Gradient> gradient(String gear, Fraction kmh) {
        return effortN(gear, kmh)
                .with(resistance.all(), (effort, held) -> held.gradient(effort - held.dragN(kmh.toDouble())));
    }

    /** The steepest gradient that this gear climbs anywhere along the engine's curve. */
    public Telling<Gradient> steepest(String gear) {
        return line(gear).with(resistance.all(), (line, held) -> held.gradient(line.mostLeftN(held)));
    }

    /** The highest speed that this gear keeps up on the level; empty where it keeps up none that the curve covers. */
    public Telling<Optional<TopSpeed>> topSpeed(String gear) {
        return line(gear).with(resistance.all(), (line, held) -> line.topSpeed(gear, held));
    }

    /** The highest speed that any forward gear keeps up on the level, and the gear. */
    public Telling<Optional<TopSpeed>> topSpeed() {
        List<Telling<Optional<TopSpeed>>> each = speeds.gearing().ratios().entrySet().stream()
                .filter(gear -> gear.getValue().signum() > 0)
                .map(gear -> topSpeed(gear.getKey()))
                .toList();
        return Telling.all(each)
                .map(tops -> tops.stream().flatMap(Optional::stream).max(Comparator.comparingDouble(TopSpeed::kmh)));
    }

    private Telling<EffortLine> line(String gear) {
        return curve().with(atWheels(gear), (curve, wheels) -> wheels.line(curve));
    }

    private Telling<AtWheels> atWheels(String gear) {
        return speeds.kmhAt(gear, Fraction.ONE)
                .with(Telling.of(efficiency, "the efficiency from engine to wheels"), AtWheels::new);
    }

    private Telling<EngineCurve> curve() {
        return Telling.of(engine, "the engine's torque curve");
    }
}
