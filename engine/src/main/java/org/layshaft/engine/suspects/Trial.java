package org.layshaft.engine.suspects;

import java.util.BitSet;
import java.util.List;
import org.layshaft.engine.api.Effort;
import org.layshaft.kb.failure.Situation;

/**
 * Something that can be tried.
 *
 * @param gears in which, one after another; neutral where the situation is not in gear
 * @param numbers what may be found, as numbers of {@link Profile.Index}
 */
record Trial(String says, Situation situation, List<String> gears, BitSet numbers, Effort effort) {}
