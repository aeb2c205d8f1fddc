package org.layshaft.web.page;

import org.layshaft.engine.api.Verdict;

/**
 * The mark of a verdict: its shape says the same as its word.
 *
 * @param shape id of the shape in {@code marks.svg}
 */
record MarkView(String shape) {
    static MarkView of(Verdict verdict) {
        return new MarkView(verdict.word());
    }

    /** Full where something is certain, half where it only may be so. */
    static MarkView ofCertainty(boolean certain) {
        return of(certain ? Verdict.WORKS : Verdict.UNCERTAIN);
    }
}
