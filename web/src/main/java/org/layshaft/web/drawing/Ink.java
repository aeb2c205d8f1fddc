package org.layshaft.web.drawing;

import java.util.Locale;

/**
 * What a figure is filled with. The colours stand in the file for viewers without a style sheet; a page that has one
 * overrides them by class. No meaning hangs on them alone.
 */
enum Ink {
    SHAFT("#d3dae1"),
    FIXED("#a9bacb"),
    FREE("#dfe8f0"),
    SLEEVE("#ecd9a6"),
    HUB("#d6bd7d"),
    RING("#c79a4b"),
    CLUTCHING_TEETH("#8196ab"),
    SELECTOR("#cfd6bd"),
    SELECTOR_SMALL("#aab592"),
    BEARING("#ffffff"),
    CLUTCH("#b9a99a"),
    DIFFERENTIAL("#e4e0d4");

    static final String LINE = "#1f2a35";
    static final String FAINT = "#6b7885";
    static final String PAPER = "#ffffff";
    static final String CASE = "#f5f3ec";
    static final String CASE_LINE = "#9a9484";
    static final String POWER = "#b5400c";
    static final String CARRYING = "#f6c9a3";
    static final String CARRYING_DEEP = "#e9a56f";
    static final String STILL = "#eceae5";
    static final String STILL_LINE = "#8b8f94";
    static final String FAULT = "#7b1560";
    static final String MEANT = "#0b57a4";

    private final String fill;

    Ink(String fill) {
        this.fill = fill;
    }

    String fill() {
        return fill;
    }

    /** As a class name. */
    String word() {
        return "ink-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
