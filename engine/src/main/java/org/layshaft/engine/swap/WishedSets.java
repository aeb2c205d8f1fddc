package org.layshaft.engine.swap;

import java.util.List;

/**
 * What a catalogue has for a wish.
 *
 * @param lookedAt how many places of sets, and of parts by themselves, would give gears of the box other teeth
 * @param offers those that meet the wish: first those that serve, the nearest first; of those equally near, what fits as
 *     it is before what wants companions; then those that do not serve, or of which that cannot be told, those that fail
 *     the fewest checks first
 */
public record WishedSets(int lookedAt, List<SetOffer> offers) {
    public WishedSets {
        offers = List.copyOf(offers);
    }

    /** Those that fit, as they are or with companions. */
    public List<SetOffer> serving() {
        return offers.stream().filter(SetOffer::serves).toList();
    }

    /** Those that do not fit, or of which that cannot be told. */
    public List<SetOffer> others() {
        return offers.stream().filter(offer -> !offer.serves()).toList();
    }
}
