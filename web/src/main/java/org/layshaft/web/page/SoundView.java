package org.layshaft.web.page;

import java.util.List;

/**
 * The page of what a box sounds.
 *
 * @param heading {@code Curlew in 3rd, 2400 turns a minute at the input}
 * @param wanted what was measured, and within what; null where nothing was
 * @param fits what fits, the likeliest first
 * @param figure as SVG
 * @param families everything that repeats, family by family
 * @param timed whether frequencies are known
 * @param untold what cannot be told, and why
 * @param api where the same stands as JSON
 */
record SoundView(
        List<PageView.LayoutView> layouts,
        SoundFormView form,
        String heading,
        String wanted,
        List<FitView> fits,
        String figure,
        List<FamilyView> families,
        boolean timed,
        List<String> untold,
        String api) {

    /**
     * Something that fits.
     *
     * @param shared whether others have the same rank
     * @param number by which its source is found in the list
     * @param which which harmonic or sideband; null for the plain order
     */
    record FitView(
            int rank,
            boolean shared,
            int number,
            String what,
            String which,
            String order,
            String hz,
            String off,
            String how,
            String load) {}

    /** What belongs together, by rising order. */
    record FamilyView(String name, List<LineView> lines) {}

    /** One order, and its frequency where that is known. */
    record LineView(
            int number, String what, String how, String order, String exact, String hz, boolean loaded, String load) {}

    /** How many the list has. */
    public int columns() {
        return timed ? 5 : 4;
    }

    public boolean hasFits() {
        return !fits.isEmpty();
    }
}
