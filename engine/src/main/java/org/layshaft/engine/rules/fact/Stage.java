package org.layshaft.engine.rules.fact;

/** Conclusions are drawn in this order, so that a rule may rest on the absence of an earlier conclusion. */
public enum Stage {
    /** Which rails are kept apart, and which are shut. */
    RAILS,
    /** Where sleeves and sliding gears stand. */
    SLEEVES,
    /** What the input drives. */
    DRIVE,
    /** What the road drives, where the input does not reach the output. */
    ROAD
}
