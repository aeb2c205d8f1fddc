package org.layshaft.web.page;

import java.util.List;
import org.layshaft.web.page.FitFormView.ChoiceView;
import org.layshaft.web.page.FitFormView.GroupView;

/**
 * The page of sets against boxes.
 *
 * @param trouble what could not be used of what was asked
 * @param companions whether the table was made with companions
 * @param waiting how far it is with them; null where it is not being made, or is made
 * @param boxes the columns
 * @param csv where the same stands as CSV
 * @param api and as JSON
 */
record CrossView(
        List<String> trouble,
        List<GroupView> choices,
        List<ChoiceView> shapes,
        List<ChoiceView> verdicts,
        boolean companions,
        String waiting,
        List<ColumnView> boxes,
        List<RowView> rows,
        String csv,
        String api) {

    /** A box. */
    record ColumnView(String name, String serials) {}

    /** A set in every box. */
    record RowView(String set, String href, List<CellView> cells) {}

    /**
     * A set in a box.
     *
     * @param mark null where there is no place for it
     * @param href to every place and every check; null where there is no place for it
     */
    record CellView(String verdict, MarkView mark, String text, String href, String label) {}

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean hasRows() {
        return !rows.isEmpty();
    }

    public int rowsCount() {
        return rows.size();
    }
}
