package org.layshaft.kb.layout;

import java.util.Optional;

/**
 * A part that the equations know nothing of by itself: it belongs to another, lies around the box, or between it and the
 * driver's hand.
 *
 * @param of id of what it belongs to: the sleeve of keys, the gear of a thrust washer, the rail of a lock-out, the lever
 *     of a linkage, the ring gear of a final drive, the differential of side gears, the half-shaft of a drive joint; empty
 *     for what belongs to the whole, as its oil
 * @param side for a lock-out, the side to which it bars the rail
 */
public record Fitting(Named named, PartKind kind, Optional<String> of, Optional<Side> side) implements Part {}
