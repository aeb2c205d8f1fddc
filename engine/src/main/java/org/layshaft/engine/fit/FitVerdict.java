package org.layshaft.engine.fit;

import java.util.Locale;

/** Whether a set serves at a place; the best first. */
public enum FitVerdict {
    FITS("fits as it is"),
    FITS_WITH("fits with companions"),
    CANNOT_BE_TOLD("cannot be told"),
    DOES_NOT_FIT("does not fit");

    private final String spoken;

    FitVerdict(String spoken) {
        this.spoken = spoken;
    }

    /** In a sentence: {@code fits as it is}. */
    public String spoken() {
        return spoken;
    }

    /** As written in tables: {@code fits-with}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
