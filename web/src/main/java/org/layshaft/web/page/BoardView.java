package org.layshaft.web.page;

import java.util.List;

/**
 * The drawing board.
 *
 * @param title of the document
 * @param folder where layouts are saved; null where they are not
 * @param notice what was done; null for nothing
 * @param trouble what could not be done, and why
 * @param conflict two versions to choose from; null for none
 * @param editor null where nothing is chosen yet
 */
record BoardView(
        String title,
        String folder,
        String notice,
        List<String> trouble,
        BoardConflictView conflict,
        BoardEditorView editor,
        List<StartView> starts,
        List<LinkView> layouts,
        List<LinkView> kept) {

    /** A family to start from. */
    record StartView(String name, String says, String href) {}

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean hasKept() {
        return !kept.isEmpty();
    }
}
