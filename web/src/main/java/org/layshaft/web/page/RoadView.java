package org.layshaft.web.page;

import java.util.List;

/**
 * The page of a box on the road.
 *
 * @param form what can be told of the vehicle, filled in as it was sent
 * @param trouble what cannot be used, a sentence each; all below is then empty
 * @param wheels what the speeds rest on
 * @param rows every gear
 * @param says besides, in sentences
 * @param speedAt heading of the columns of engine speeds; null where no road speed is asked about
 * @param figures each with its table, or why it cannot be told
 */
record RoadView(
        List<PageView.LayoutView> layouts,
        String layoutName,
        FormView form,
        List<String> trouble,
        String wheels,
        String speedUnit,
        String speedAt,
        List<RowView> rows,
        List<String> says,
        List<FigureView> figures,
        String api) {

    /**
     * @param layout id of the layout
     * @param units of what is shown
     * @param otherUnits the same page in the other units
     */
    record FormView(
            String layout,
            String units,
            List<FieldView> facts,
            List<FieldView> asked,
            LinkView otherUnits,
            LinkView asStated) {}

    /**
     * @param like what it is written like, or what the layout states
     */
    record FieldView(String name, String label, String value, String like, boolean wide) {}

    /** One gear; what cannot be told is a dash. */
    record RowView(
            String gear,
            NumberView ratio,
            String overall,
            String step,
            String drop,
            String speed,
            String rpm,
            String after,
            String climbs) {}

    /**
     * A figure and the table of what it shows.
     *
     * @param svg empty where it cannot be told
     * @param whyNot null where it can
     */
    record FigureView(
            String id,
            String heading,
            String svg,
            String caption,
            String whyNot,
            List<String> columns,
            List<List<String>> table) {
        public boolean hasTable() {
            return !table.isEmpty();
        }
    }

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean isTimed() {
        return speedAt != null;
    }
}
