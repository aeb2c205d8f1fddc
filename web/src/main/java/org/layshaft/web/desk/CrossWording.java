package org.layshaft.web.desk;

import org.layshaft.engine.fit.CrossTable;
import org.layshaft.engine.fit.FitVerdict;

/** How a set comes out in a box, in a word or two. */
public final class CrossWording {
    /** Where a box has no place for a set. */
    public static final String NO_PLACE = "no place";

    private CrossWording() {}

    /** @param companions whether it was tried with further parts; otherwise it may yet fit with some */
    public static String brief(CrossTable.Cell cell, boolean companions) {
        return cell == null ? NO_PLACE : brief(cell.best(), companions);
    }

    public static String brief(FitVerdict verdict, boolean companions) {
        return switch (verdict) {
            case FITS -> "fits";
            case FITS_WITH -> "with others";
            case CANNOT_BE_TOLD -> "untold";
            case DOES_NOT_FIT -> companions ? "does not" : "not as it is";
        };
    }
}
