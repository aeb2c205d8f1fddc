package org.layshaft.web.page;

import java.util.List;

/**
 * The page of all layouts.
 *
 * @param where what is looked for, as typed
 * @param kept what was chosen besides, for the form to pass on
 * @param understood what must hold, each to be taken out again where it was chosen
 * @param leftOver words that were passed over
 * @param count what was found, in a sentence
 * @param facets what can be chosen besides
 * @param apart whether anything narrows the list
 */
record GalleryView(
        String layout,
        String where,
        List<String> trouble,
        List<PairView> kept,
        List<String> understood,
        List<LinkView> chosen,
        String leftOver,
        String count,
        List<FacetView> facets,
        List<CardView> cards,
        boolean apart,
        String all,
        String api) {

    /** A parameter of the form. */
    record PairView(String name, String value) {}

    /** What belongs to one question. */
    record FacetView(String title, List<ChoiceView> choices) {}

    /**
     * Something to choose.
     *
     * @param count how many of the layouts shown it holds of
     */
    record ChoiceView(String text, long count, String href, boolean current) {}

    /**
     * One layout.
     *
     * @param drawing address of its drawing
     * @param facts what it is like, in short
     */
    record CardView(
            String name,
            String summary,
            String facts,
            String drawing,
            String href,
            List<LinkView> doors,
            boolean current) {}

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean hasUnderstood() {
        return !understood.isEmpty();
    }

    public boolean hasChosen() {
        return !chosen.isEmpty();
    }
}
