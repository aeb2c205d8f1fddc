package org.layshaft.kb.typed;

import org.layshaft.kb.layout.Road;

/** What is typed of the vehicle. */
public record TypedRoad(String pointer, Road facts) {}
