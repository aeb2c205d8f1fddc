package org.layshaft.engine.whatif;

import org.layshaft.kb.layout.Side;

/**
 * What the lever does to select something.
 *
 * @param at what is selected, by name
 * @param rail id of the rail that is pushed
 */
record Selection(String at, String rail, Side side) {}
