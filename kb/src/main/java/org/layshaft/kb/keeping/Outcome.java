package org.layshaft.kb.keeping;

import java.util.Optional;

/** What came of saving. */
public sealed interface Outcome {

    /**
     * It is on the disk.
     *
     * @param created whether nothing was in its place before
     */
    record Written(Kept kept, boolean created) implements Outcome {}

    /**
     * It is not: the file is no longer what one started from.
     *
     * @param theirs what is there instead; empty where it was deleted
     */
    record Overtaken(Optional<Kept> theirs) implements Outcome {}
}
