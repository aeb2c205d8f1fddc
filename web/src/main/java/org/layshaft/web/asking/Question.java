package org.layshaft.web.asking;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Evidence;
import org.layshaft.kb.failure.Fault;

/**
 * A question as understood. Gears are named as derived ({@code 3}, {@code R}); parts, layouts by id.
 */
public sealed interface Question {

    String layout();

    /** What is supposed to be wrong; empty for a sound box. */
    List<Fault> faults();

    /** Which of these gears still work; which of all, where none is named. */
    record GearsLeft(String layout, List<Fault> faults, List<String> gears) implements Question {}

    /** What happens: gears, what is noticed, what can now meet. */
    record WhatHappens(String layout, List<Fault> faults) implements Question {}

    /** The ratio of these gears; of all, where none is named. */
    record RatioOf(String layout, List<Fault> faults, List<String> gears) implements Question {}

    /** The way of the power in a gear. */
    record PowerPath(String layout, List<Fault> faults, String gear) implements Question {}

    /**
     * What turns in a gear; in neutral, where none is named.
     *
     * @param parts the parts asked about; empty for all
     */
    record WhatTurns(String layout, List<Fault> faults, Optional<String> gear, List<String> parts)
            implements Question {}

    /** Which way a part turns in a gear; in neutral, where none is named. */
    record WhichWay(String layout, List<Fault> faults, String part, Optional<String> gear) implements Question {}

    /** Whether two gears can be engaged at once: these two, or any where none are named. */
    record TwoAtOnce(String layout, List<Fault> faults, List<String> gears) implements Question {}

    /**
     * What may be wrong.
     *
     * @param evidence what was noticed, and what was not
     */
    record Suspects(String layout, List<Fault> faults, Evidence evidence) implements Question {}

    /** About parts of the catalogue, and not about what still works; nothing is supposed to be wrong. */
    sealed interface OfParts extends Question {
        @Override
        default List<Fault> faults() {
            return List.of();
        }
    }

    /**
     * Whether a set serves, and with what.
     *
     * @param set its number
     * @param box id of a layout or a build; empty for all boxes
     * @param place id of a place; empty for wherever it can stand
     */
    record Fits(String layout, String set, Optional<String> box, Optional<String> place) implements OfParts {}

    /**
     * What serves in a box.
     *
     * @param box id of a layout or a build
     * @param place id of a place; empty for all
     */
    record FitsHere(String layout, String box, Optional<String> place) implements OfParts {}

    /**
     * What is supplied today for a number.
     *
     * @param set number of a set or a part
     */
    record Supplied(String layout, String set) implements OfParts {}

    /**
     * What a set changes once it is put in.
     *
     * @param set its number
     * @param box id of a layout or a build
     * @param place id of a place; empty for where it serves best
     */
    record PutIn(String layout, String set, String box, Optional<String> place) implements OfParts {}

    /**
     * What brings a gear nearer another.
     *
     * @param box id of a layout or a build
     */
    record Nearer(String layout, String box, String gear, String other) implements OfParts {}

    /**
     * Which axle gives an engine speed at a road speed.
     *
     * @param box id of a layout or a build
     * @param gear empty for the highest
     * @param rpm as written
     * @param kmh as written
     */
    record AxleFor(String layout, String box, Optional<String> gear, String rpm, String kmh) implements OfParts {}

    /**
     * Which driven gear keeps the speed reading right on another axle.
     *
     * @param box id of a layout or a build
     * @param axle its ratio, as written
     */
    record SpeedGear(String layout, String box, String axle) implements OfParts {}

    /**
     * Which gear was measured.
     *
     * @param teeth as counted
     * @param tip diameter in mm, as written
     * @param helix angle in degrees, as written
     */
    record Measured(String layout, String teeth, Optional<String> tip, Optional<String> helix) implements OfParts {}

    /** What the speedometer does on other tyres, by their sizes as on the sidewall: {@code 195/65 R15}. */
    record OtherTyres(String layout, String before, String after) implements OfParts {}

    /** Why a gear does not work, or does. */
    record WhyNot(String layout, List<Fault> faults, String gear) implements Question {}
}
