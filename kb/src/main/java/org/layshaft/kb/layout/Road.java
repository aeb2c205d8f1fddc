package org.layshaft.kb.layout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is known of the vehicle that a box stands in. Whatever is not stated is empty.
 *
 * @param tyre size code of the driven wheels: {@code 205/55 R16}
 * @param rollingCircumferenceMm how far a driven wheel rolls in one turn, in mm; goes before the tyre
 * @param dynamicFactor the part of its free circumference that the tyre rolls in one turn
 * @param axleRatio turns of the box's output for one turn of the wheels
 * @param efficiency from engine to wheels, from 0 to 1
 * @param massKg of the vehicle as it stands on the road
 * @param rollingCoefficient rolling resistance over weight
 * @param dragAreaM2 drag coefficient times frontal area, in m²
 * @param airDensityKgM3 in kg/m³
 * @param engine full-load torque by rising speed; empty where it is not stated
 * @param speedRead where the speed is read
 */
public record Road(
        Optional<String> tyre,
        OptionalInt rollingCircumferenceMm,
        Optional<BigDecimal> dynamicFactor,
        Optional<BigDecimal> axleRatio,
        Optional<BigDecimal> efficiency,
        Optional<BigDecimal> massKg,
        Optional<BigDecimal> rollingCoefficient,
        Optional<BigDecimal> dragAreaM2,
        Optional<BigDecimal> airDensityKgM3,
        List<EnginePoint> engine,
        Optional<SpeedRead> speedRead) {
    /** Nothing is stated. */
    public static final Road NOTHING = new Road(
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty());

    public Road {
        engine = List.copyOf(engine);
    }

    /** The same on another tyre, of which nothing but the size is known. */
    public Road withTyre(String code) {
        return on(Optional.of(code), OptionalInt.empty(), Optional.empty(), axleRatio);
    }

    /** The same on wheels that roll so far in one turn, in mm. */
    public Road withRollingCircumference(int mm) {
        return on(Optional.empty(), OptionalInt.of(mm), Optional.empty(), axleRatio);
    }

    public Road withAxleRatio(BigDecimal ratio) {
        return on(tyre, rollingCircumferenceMm, dynamicFactor, Optional.of(ratio));
    }

    private Road on(
            Optional<String> newTyre, OptionalInt newMm, Optional<BigDecimal> newFactor, Optional<BigDecimal> newAxle) {
        return new Road(
                newTyre,
                newMm,
                newFactor,
                newAxle,
                efficiency,
                massKg,
                rollingCoefficient,
                dragAreaM2,
                airDensityKgM3,
                engine,
                speedRead);
    }

    /** Full-load torque at one speed. */
    public record EnginePoint(BigDecimal rpm, BigDecimal torqueNm) {}

    /** Where the drive or the pulses of a speedometer are taken. */
    public enum SpeedRead {
        GEARBOX_OUTPUT,
        DIFFERENTIAL,
        WHEELS
    }
}
