package org.layshaft.web.page;

import java.util.List;

/**
 * Two boxes side by side.
 *
 * @param others that can be held beside the first
 * @param compared null where none was chosen yet
 */
record CompareView(
        List<PageView.LayoutView> layouts,
        String layout,
        String layoutName,
        List<ChoiceView> others,
        BothView compared) {

    /** A layout to choose. */
    record ChoiceView(String id, String name, boolean current) {}

    /**
     * What there is to say of both.
     *
     * @param ladders the steps of both, one above the other
     * @param whyNoParts null where parts can be told
     */
    record BothView(
            String one,
            String other,
            String oneHref,
            String otherHref,
            String swapped,
            List<RowView> gears,
            String oneSpread,
            String otherSpread,
            RoadView.FigureView ladders,
            List<DiffersView> structure,
            String alike,
            List<PartView> parts,
            String whyNoParts,
            String api) {
        public boolean hasParts() {
            return !parts.isEmpty();
        }

        public boolean hasStructure() {
            return !structure.isEmpty();
        }
    }

    /** One gear in both; null where a box has none. */
    record RowView(String gear, NumberView one, NumberView other, String change, String oneStep, String otherStep) {}

    /** What differs. */
    record DiffersView(String what, String one, String other) {}

    /** A part number that stands in both. */
    record PartView(String number, String href, String name, String inOne, String inOther) {}
}
