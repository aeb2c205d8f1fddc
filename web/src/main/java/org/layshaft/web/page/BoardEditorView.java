package org.layshaft.web.page;

import java.util.List;

/**
 * A text with all that is told of it.
 *
 * @param opened what it was opened from; empty for nothing
 * @param version of what is there; empty where nothing is
 * @param where in words, where it is kept
 * @param verdict whether it can be saved, in words
 * @param lines the text line by line, with what is found at each
 * @param elsewhere what it would break in other files
 * @param gears what it comes to
 * @param differences printed ratios that are not what is derived
 * @param svg the drawing; null where there is none
 * @param drawn what is drawn, in words
 * @param earlier versions that can be put back
 */
record BoardEditorView(
        String text,
        String pack,
        String opened,
        String version,
        String where,
        String verdict,
        boolean sound,
        List<BoardFindingView> findings,
        List<LineView> lines,
        List<BoardFindingView> elsewhere,
        List<GearView> gears,
        List<String> differences,
        String svg,
        String drawn,
        List<LinkView> earlier) {

    /** A line of the text. */
    record LineView(int number, String text, List<BoardFindingView> findings) {
        public boolean hasFindings() {
            return !findings.isEmpty();
        }
    }

    /**
     * A gear that follows from the text.
     *
     * @param printed its ratio in the service data; null where none is given
     */
    record GearView(String name, String direction, NumberView ratio, String printed, boolean drawn) {}

    public boolean hasFindings() {
        return !findings.isEmpty();
    }

    public boolean hasElsewhere() {
        return !elsewhere.isEmpty();
    }

    public boolean hasGears() {
        return !gears.isEmpty();
    }

    public boolean hasDifferences() {
        return !differences.isEmpty();
    }

    public boolean hasEarlier() {
        return !earlier.isEmpty();
    }
}
