package org.layshaft.engine.sound;

import java.util.Locale;

/** What repeats. */
public enum SourceKind {
    /** Teeth of two gears meet. */
    MESH(Family.TEETH),
    /** Links of a chain, or teeth of a belt, run onto their sprockets. */
    CHAIN(Family.TEETH),
    /** The same teeth of a pair meet again. */
    HUNTING_TOOTH(Family.SAME_TEETH),
    /** The teeth of a pair that meet one another are round once, where they have a factor in common. */
    ASSEMBLY_PHASE(Family.SAME_TEETH),
    /** One tooth meets several gears in each turn. */
    TOOTH(Family.SAME_TEETH),
    /** Planets pass one place. */
    PLANETS(Family.SAME_TEETH),
    /** A shaft with all that is fixed on it turns. */
    SHAFT(Family.TURNING),
    /** A gear turns by itself. */
    GEAR(Family.TURNING),
    /** The case of a differential turns. */
    DIFFERENTIAL(Family.TURNING),
    /** What joins two shafts turns. */
    JOINT(Family.TURNING),
    /** A universal joint runs fast and slow, twice in each turn. */
    UNIVERSAL_JOINT(Family.TURNING),
    /** A half-shaft with its wheel, or the wheels behind an axle, turn. */
    WHEEL(Family.TURNING),
    /** One ring of a bearing turns against the other. */
    BEARING(Family.BEARINGS),
    /** Balls or rollers pass one place on the outer race. */
    OUTER_RACE(Family.BEARINGS),
    /** Balls or rollers pass one place on the inner race. */
    INNER_RACE(Family.BEARINGS),
    /** A ball or roller turns about itself. */
    ELEMENT_SPIN(Family.BEARINGS),
    /** One place on a ball or roller strikes both races in turn: twice its spin. */
    ELEMENT_STRIKES(Family.BEARINGS),
    /** The cage goes round. */
    CAGE(Family.BEARINGS);

    private final Family family;

    SourceKind(Family family) {
        this.family = family;
    }

    /** What they belong together with, in the order in which they are listed. */
    public enum Family {
        /** Teeth that meet, and links of chains: what is mostly heard. */
        TEETH,
        /** Certain teeth, and planets, that come round again. */
        SAME_TEETH,
        /** Whatever turns, once in each turn or a few times. */
        TURNING,
        /** Whatever rolls. */
        BEARINGS
    }

    public Family family() {
        return family;
    }

    /** As written: {@code outer-race}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
