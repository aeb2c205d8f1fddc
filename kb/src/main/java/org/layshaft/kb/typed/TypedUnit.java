package org.layshaft.kb.typed;

/**
 * A layout that is a part of another.
 *
 * @param name what it is called there; ids of its parts begin with it
 * @param layout which layout it is
 * @param keepsClutch whether the engine drives the whole through the clutch of this unit
 */
public record TypedUnit(String name, Reference layout, boolean keepsClutch) {}
