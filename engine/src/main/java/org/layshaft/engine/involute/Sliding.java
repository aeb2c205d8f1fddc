package org.layshaft.engine.involute;

/**
 * How two flanks slide on each other at a point of contact, in the transverse section.
 *
 * @param mmPerRadian sliding for each radian that the first gear turns
 * @param specificOfFirst sliding over the rolling of the first gear's flank: below 0 toward its root, at most 1
 * @param specificOfSecond the same of the second's
 */
public record Sliding(double mmPerRadian, double specificOfFirst, double specificOfSecond) {

    /** @param place on the pair's line of action */
    static Sliding at(InvolutePair pair, double place) {
        InvoluteGear pinion = pair.pinion();
        InvoluteGear mate = pair.mate();
        double fromPitchPoint = place - pair.line().pitchPoint();
        double length = pair.centreMm() * Math.sin(pair.workingAngle());
        double ratio = (double) pinion.teeth() / mate.teeth();
        double rollingOfPinion = place;
        double rollingOfMate = ratio * (mate.isInternal() ? length + place : length - place);
        double perRadianOfPinion = Math.abs(fromPitchPoint) * (1 + mate.outward() * ratio);
        double ofPinion = 1 - rollingOfMate / rollingOfPinion;
        double ofMate = 1 - rollingOfPinion / rollingOfMate;
        return pinion == pair.first()
                ? new Sliding(perRadianOfPinion, ofPinion, ofMate)
                : new Sliding(perRadianOfPinion / ratio, ofMate, ofPinion);
    }

    /** Sliding speed while the first gear turns so fast. */
    public double mmPerSecond(double turnsPerMinuteOfFirst) {
        return mmPerRadian * turnsPerMinuteOfFirst * Math.PI / 30;
    }
}
