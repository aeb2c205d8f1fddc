package org.layshaft.kb.typed;

import java.util.Optional;

/**
 * A bearing as typed.
 *
 * @param in the shaft around it; empty for the case
 */
public record TypedBearing(String pointer, String id, Naming naming, Optional<Reference> in) implements TypedItem {}
