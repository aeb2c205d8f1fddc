package org.layshaft.kb.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A place on a part that facts are about. */
public enum Section {
    /** Its teeth that mesh with those of another gear. */
    TOOTHING("teeth"),
    /** What it sits on, or what sits there. */
    SEAT("seat"),
    /** The small teeth on the side of a gear, and the points of a blocking ring that stand before them. */
    CLUTCHING("clutching teeth"),
    /** The friction cone of a gear, and the one in a blocking ring that takes it. */
    CONE("cone"),
    /** What only a blocking ring has. */
    RING("ring"),
    /** The keys of a synchroniser. */
    KEY("key"),
    /** The splines along which a sleeve slides on its hub. */
    SLIDING("sliding splines"),
    /** The groove of a sleeve that the fork lies in. */
    GROOVE("fork groove"),
    /** The pads of a fork. */
    PAD("fork pads"),
    /** The hole of a fork for its rail; of a rail, its outside. */
    RAIL("rail"),
    BEARING("bearing"),
    /** A cage of needles between shaft and gear. */
    NEEDLES("needles"),
    SHIM("shim"),
    /** Where a ring gear is bolted to the case of a differential. */
    FLANGE("flange"),
    /** Two lines of shafts in the case. */
    CENTRE("centre distance");

    private final String spoken;

    Section(String spoken) {
        this.spoken = spoken;
    }

    /** As written in catalogues: {@code toothing}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As spoken: {@code fork groove}. */
    public String spoken() {
        return spoken;
    }

    /** The facts that stand in it. */
    public List<FactName> facts() {
        return Arrays.stream(FactName.values())
                .filter(fact -> fact.section() == this)
                .toList();
    }
}
