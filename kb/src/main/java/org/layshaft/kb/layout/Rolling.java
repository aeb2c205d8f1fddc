package org.layshaft.kb.layout;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What rolls in a bearing, as typed. Whatever is not stated is empty.
 *
 * @param count balls or rollers in one row
 * @param elementMm diameter of a ball, or of a roller at the middle of its length, in mm
 * @param pitchMm diameter of the circle on which their middles lie, in mm
 * @param contactDeg angle between the line through the two points of contact and a plane square to the shaft, in degrees
 */
public record Rolling(
        OptionalInt count,
        Optional<BigDecimal> elementMm,
        Optional<BigDecimal> pitchMm,
        Optional<BigDecimal> contactDeg) {}
