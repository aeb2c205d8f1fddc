package org.layshaft.engine.suspects;

import static org.layshaft.engine.suspects.Sources.A1;
import static org.layshaft.engine.suspects.Sources.A2;
import static org.layshaft.engine.suspects.Sources.A3;
import static org.layshaft.engine.suspects.Sources.N1;
import static org.layshaft.engine.suspects.Sources.T2;
import static org.layshaft.engine.suspects.Sources.V1;
import static org.layshaft.engine.suspects.Sources.V2;

import java.util.List;

/**
 * Published rows that are not tried, and why.
 *
 * @param applies whether a demo box has the part, so that the row counts against us
 */
record LeftOut(String id, String source, boolean applies, String why) {

    /** Whether it counts against us: a demo box has the part, and the source may be cited. */
    boolean counts() {
        return applies && !source.contains("maker withheld");
    }

    static final List<LeftOut> ROWS = List.of(
            new LeftOut(
                    "S018", V2, true, "with the vehicle standing in neutral the output shaft stands in its bearings"),
            new LeftOut("S036", A2, false, "names no part: it says that what is noisy in neutral is noisy in gear"),
            new LeftOut("S075", V1, true, "a worn synchroniser of first and second is not told from second by noise"),
            new LeftOut("S077", V1, true, "the same of second"),
            new LeftOut(
                    "S078", V2, true, "the needles of a gear do not turn on it while it is engaged: quiet, not noisy"),
            new LeftOut("S080", V2, true, "the same of second"),
            new LeftOut("S091", A1, false, "names an operation, a power take-off left engaged, and no failure"),
            new LeftOut("S111", N1, true, "a blocking ring brings speeds together and does not hold the gear in"),
            new LeftOut("S187", T2, false, "names no part: it refers to two gears locked together"),
            new LeftOut("S208", A3, false, "a failed bearing is a consequence and nothing that a person notices"));
}
