package org.layshaft.engine.api;

import org.layshaft.kb.layout.Layout;

/**
 * Goes back from what is noticed to what may be wrong. Thread-safe; what the faults of a layout show is worked out at the
 * first question about it, and kept.
 */
public interface Diagnostician {

    /**
     * What may be wrong.
     *
     * @throws UnanswerableException where the evidence names notices, gears or situations that there are not; all of them
     *     at once
     */
    Suspects suspects(Layout layout, Evidence evidence);

    /**
     * Evidence as written: {@code pulling 3: growls; neutral-pedal-down: not growls; after-work}. Notices and situations
     * may stand there by any of their words.
     *
     * @throws UnanswerableException where it cannot be read; it says everything that is wrong at once
     */
    Evidence read(Layout layout, String written);

    /** An observation in words: {@code pulling in 3rd: it growls}. */
    String say(Layout layout, Observation observation);
}
