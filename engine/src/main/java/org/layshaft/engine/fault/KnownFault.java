package org.layshaft.engine.fault;

import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;

/**
 * A fault with its mode at hand.
 *
 * @param words the fault in words: {@code the 3-4 fork is bent badly toward the front (4th)}
 */
public record KnownFault(Fault fault, FailureMode mode, String words) {}
