package org.layshaft.web.page;

import java.util.List;

/**
 * Two versions of one layout.
 *
 * @param name what both are
 * @param mine the text that was to be saved
 * @param theirVersion of what is there; empty where it was deleted
 * @param copyId an id under which a copy can be saved
 * @param lines what both have, and what only one has
 */
record BoardConflictView(
        String name,
        String mine,
        String pack,
        String opened,
        String theirVersion,
        String copyId,
        boolean deleted,
        boolean draft,
        List<LineView> lines) {

    /**
     * A line.
     *
     * @param sign plus where only mine has it, minus where only theirs has it
     * @param who the same in words
     */
    record LineView(String sign, String who, boolean mine, boolean theirs, String text) {}
}
