package org.layshaft.engine.teeth;

/** What a mesh does to its two gears. */
public record PairForces(ToothForce onDriver, ToothForce onDriven) {}
