package org.layshaft.web.board;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.keeping.Kept;
import org.layshaft.kb.keeping.Place;

/** What came of saving a text. */
public sealed interface Saved {

    /**
     * It is on the disk.
     *
     * @param created whether nothing was in its place before
     * @param unloaded what keeps its pack from being loaded, so that what was known before still is; empty where it is
     *     loaded, or a draft
     */
    record Done(Kept kept, boolean created, List<Finding> unloaded) implements Saved {}

    /**
     * It is not: what one started from is no longer what is there.
     *
     * @param theirs what is there; empty where it was deleted
     */
    record Overtaken(Place place, Optional<Kept> theirs) implements Saved {}

    /** It is not: something in it is broken, or it breaks something. It can be saved as a draft. */
    record Broken(Look look) implements Saved {}
}
