package org.layshaft.web.desk;

/**
 * One way to cut a pair: as it is now, as it is wished, or as it is offered. What is not told is a dash.
 *
 * @param what it is: {@code now}, {@code wished}, {@code offered 1}
 * @param teeth of both gears
 * @param moduleMm normal module
 * @param helixDeg helix angle
 * @param centre distance of the shafts, with its unit
 * @param shiftSum what the profile shifts come to
 * @param ratio of the box in this gear, with three decimals
 * @param exact the same as a fraction
 * @param misses by how much, in words
 * @param below step from the next lower gear; a dash where there is none
 * @param above step to the next higher gear
 */
public record WishLine(
        String what,
        String teeth,
        String moduleMm,
        String helixDeg,
        String centre,
        String shiftSum,
        String ratio,
        String exact,
        String misses,
        String below,
        String above) {}
