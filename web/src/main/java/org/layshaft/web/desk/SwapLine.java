package org.layshaft.web.desk;

import java.util.List;

/**
 * One figure before and after a change.
 *
 * @param gear name of the gear before; empty where it is about the whole
 * @param what it is a figure of
 * @param before with its unit; a dash where there is none, or it cannot be told
 * @param because why before or after cannot be told, in clauses
 */
public record SwapLine(String gear, String what, String before, String after, List<String> because) {
    /** Whether it is another one now. */
    public boolean isChanged() {
        return !before.equals(after);
    }
}
