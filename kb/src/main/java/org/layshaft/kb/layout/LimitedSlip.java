package org.layshaft.kb.layout;

import java.util.OptionalDouble;

/**
 * What makes a differential resist a difference of speed between its sides. Either may be stated, or both.
 *
 * @param preloadNm torque, in N·m, that its clutches hold between the sides with nothing driving
 * @param biasRatio greatest torque of the slower side for one of the faster, as a torque-sensing differential allows it
 */
public record LimitedSlip(OptionalDouble preloadNm, OptionalDouble biasRatio) {}
