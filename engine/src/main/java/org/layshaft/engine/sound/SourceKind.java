package org.layshaft.engine.sound;

import java.util.Locale;

/** What repeats. */
public enum SourceKind {
    /** Teeth of two gears meet. */
    MESH,
    /** Links of a chain, or teeth of a belt, run onto their sprockets. */
    CHAIN,
    /** The same teeth of a pair meet again. */
    HUNTING_TOOTH,
    /** The teeth of a pair that meet one another are round once, where they have a factor in common. */
    ASSEMBLY_PHASE,
    /** One tooth meets several gears in each turn. */
    TOOTH,
    /** Planets pass one place. */
    PLANETS,
    /** A shaft with all that is fixed on it turns. */
    SHAFT,
    /** A gear turns by itself. */
    GEAR,
    /** The case of a differential turns. */
    DIFFERENTIAL,
    /** What joins two shafts turns. */
    JOINT,
    /** A universal joint runs fast and slow, twice in each turn. */
    UNIVERSAL_JOINT,
    /** A half-shaft with its wheel, or the wheels behind an axle, turn. */
    WHEEL,
    /** One ring of a bearing turns against the other. */
    BEARING,
    /** Balls or rollers pass one place on the outer race. */
    OUTER_RACE,
    /** Balls or rollers pass one place on the inner race. */
    INNER_RACE,
    /** A ball or roller turns about itself. */
    ELEMENT_SPIN,
    /** One place on a ball or roller strikes both races in turn: twice its spin. */
    ELEMENT_STRIKES,
    /** The cage goes round. */
    CAGE;

    /** As written: {@code outer-race}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
