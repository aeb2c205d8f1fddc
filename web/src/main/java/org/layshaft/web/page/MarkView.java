package org.layshaft.web.page;

import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.fit.FitVerdict;

/**
 * The mark of a verdict: its shape says the same as its word.
 *
 * @param shape id of the shape in {@code marks.svg}
 */
record MarkView(String shape) {
    static MarkView of(Verdict verdict) {
        return new MarkView(verdict.word());
    }

    static MarkView of(FitVerdict verdict) {
        return new MarkView(verdict(verdict));
    }

    /** The verdict on a gear that has the mark of this one. */
    static String verdict(FitVerdict verdict) {
        return switch (verdict) {
            case FITS -> Verdict.WORKS.word();
            case FITS_WITH -> Verdict.WORKS_WITH_NOTICE.word();
            case CANNOT_BE_TOLD -> Verdict.UNCERTAIN.word();
            case DOES_NOT_FIT -> Verdict.LOST.word();
        };
    }

    /** Full where something is certain, half where it only may be so. */
    static MarkView ofCertainty(boolean certain) {
        return of(certain ? Verdict.WORKS : Verdict.UNCERTAIN);
    }
}
