package org.layshaft.web.drawing;

import java.util.Optional;
import org.layshaft.kb.layout.Side;

/**
 * A sleeve, a sliding gear or an inner clutch brought to its next place.
 *
 * @param member id of what is moved
 * @param way to which side it goes
 * @param to where it then stands; empty for neutral
 */
public record Move(String member, Side way, Optional<Side> to) {}
