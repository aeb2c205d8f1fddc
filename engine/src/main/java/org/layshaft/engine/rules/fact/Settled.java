package org.layshaft.engine.rules.fact;

/** Everything of this stage has been concluded. */
public record Settled(Stage stage) {}
