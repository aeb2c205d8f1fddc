package org.layshaft.web.page;

import java.util.List;

/**
 * A box at a glance.
 *
 * @param facts what it is like, in short
 * @param says what is to be said of it at once: span of its ratios, printed ratios that differ
 * @param ladder the figure of its steps
 * @param gears each with what selects it
 * @param shared parts that several gears share
 * @param mechanism how it is selected, in sentences
 * @param rails each with its forks and what is engaged at either end
 * @param kept pairs of gears that nothing but a piece of the interlock keeps apart, in sentences
 * @param untold what cannot be told of it, and why
 */
record GlanceView(
        List<PageView.LayoutView> layouts,
        String layout,
        String layoutName,
        String summary,
        String facts,
        String drawing,
        List<String> says,
        List<LinkView> doors,
        RoadView.FigureView ladder,
        List<GearView> gears,
        List<SharedView> shared,
        List<String> mechanism,
        List<RailView> rails,
        List<String> kept,
        List<String> untold,
        String api) {

    /**
     * One gear.
     *
     * @param step its ratio over that of the next higher one
     * @param engaged what is moved where, in words
     * @param pairs the pairs of teeth that carry it
     */
    record GearView(
            String name, String href, NumberView ratio, String step, String drop, String engaged, String pairs) {}

    /** A part and the gears it has a hand in. */
    record SharedView(String part, String href, String gears) {}

    /** A rail. */
    record RailView(String rail, String href, String front, String rear) {}

    public boolean hasShared() {
        return !shared.isEmpty();
    }

    public boolean hasRails() {
        return !rails.isEmpty();
    }

    public boolean hasKept() {
        return !kept.isEmpty();
    }

    public boolean hasUntold() {
        return !untold.isEmpty();
    }
}
