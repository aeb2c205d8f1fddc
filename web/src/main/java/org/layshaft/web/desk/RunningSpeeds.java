package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MISSING;
import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.RoadSpeeds;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Road;
import org.layshaft.web.desk.Listened.RoadSpeed;

/** From the speeds that were told to those of a box. */
record RunningSpeeds(Box box) {

    /** Of the input, in gear; empty where no speed was told. */
    Optional<Fraction> rpmInGear(String gear, Optional<Fraction> rpm, Optional<RoadSpeed> road) {
        if (rpm.isPresent() && road.isPresent()) {
            throw new BadInputException(
                    UNFIT,
                    "Both an engine speed, %s rpm, and a road speed, %s, are told. In gear one follows from the other: give one of them."
                            .formatted(Decimals.plain(rpm.get(), 1), road.get().says()));
        }
        return rpm.or(() -> road.map(speed -> told(onRoad().rpmAt(gear, speed.kmh()), speed)));
    }

    /** Turns of the output for one of the input in neutral, in the sense of the forward gears. */
    Fraction outputForOneOfInput(Optional<Fraction> rpm, Optional<RoadSpeed> road) {
        if (road.isPresent() && rpm.isEmpty()) {
            throw new BadInputException(
                    MISSING,
                    "In neutral the engine does not follow the road, %s. Give the rpm of the engine as well."
                            .formatted(road.get().says()));
        }
        return road.map(speed -> told(onRoad().outputRpmAt(speed.kmh()), speed)
                        .over(rpm.orElseThrow())
                        .times(forward()))
                .orElse(Fraction.ZERO);
    }

    /** 1 where the output turns the input's way when the vehicle goes forward; else -1. */
    private Fraction forward() {
        return box.gears().stream()
                .findFirst()
                .flatMap(gear -> gear.motion().ratio())
                .filter(ratio -> ratio.signum() < 0)
                .map(ratio -> Fraction.ONE.negated())
                .orElse(Fraction.ONE);
    }

    private RoadSpeeds onRoad() {
        try {
            return Vehicle.of(box, box.layout().road().orElse(Road.NOTHING)).speeds();
        } catch (ImpossibleFactsException impossible) {
            throw new BadInputException(UNFIT, impossible.getMessage());
        }
    }

    private Fraction told(Telling<Fraction> turns, RoadSpeed speed) {
        return turns.value()
                .orElseThrow(() -> new BadInputException(
                        UNFIT,
                        "How fast %s turns at %s %s. Give the rpm of the engine instead."
                                .formatted(
                                        box.layout().name(),
                                        speed.says(),
                                        turns.whyNot().orElseThrow())));
    }
}
