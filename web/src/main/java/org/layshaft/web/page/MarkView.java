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
}
