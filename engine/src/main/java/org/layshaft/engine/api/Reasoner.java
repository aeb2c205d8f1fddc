package org.layshaft.engine.api;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;

/**
 * Answers questions about layouts. Thread-safe; every method computes from the facts it is given.
 *
 * <p>Methods throw {@link UnanswerableException} where the question itself cannot stand: an unknown part, a mode that
 * cannot befall it, too many unknowns at once.
 */
public interface Reasoner {

    /** What a layout comes to when all is sound. */
    Box box(Layout layout);

    /** What follows from these faults, which may be none. */
    WhatIf whatIf(Layout layout, List<Fault> faults);

    /**
     * How everything turns in any stance, likely or not, with these faults.
     *
     * @param faults what is not told of them is taken as in their first possibility
     */
    Motion motion(Layout layout, List<Fault> faults, Stance stance);

    /**
     * What torques stand on everything in any stance, with these faults.
     *
     * @param faults as for {@link #motion}
     * @return empty where the output does not turn with the input
     */
    Optional<Torques> torques(Layout layout, List<Fault> faults, Stance stance);

    /** A fault of this layout as a clause: {@code the 3-4 fork is bent badly toward the front (4th)}. */
    String say(Layout layout, Fault fault);
}
