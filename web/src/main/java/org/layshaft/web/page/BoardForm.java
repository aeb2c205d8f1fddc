package org.layshaft.web.page;

import java.util.Optional;

/**
 * What the drawing board is sent.
 *
 * @param opened what the text was opened from, as written by {@link BoardAddress}; empty for a text that is kept nowhere
 * @param version SHA-256 of what is there as far as the sender knows; empty where nothing is
 * @param gear to be drawn
 * @param copyId the id to save a copy under
 */
public record BoardForm(
        String text,
        String pack,
        Optional<String> opened,
        Optional<String> version,
        Optional<String> gear,
        Optional<String> copyId) {
    public BoardForm {
        text = text.replace("\r\n", "\n");
    }

    BoardForm with(String newText, Optional<String> newOpened, Optional<String> newVersion) {
        return new BoardForm(newText, pack, newOpened, newVersion, gear, copyId);
    }
}
