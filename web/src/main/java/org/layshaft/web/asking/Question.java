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

    /** Why no gear drives, where none does. */
    record WhyNone(String layout, List<Fault> faults) implements Question {}

    /** About the box at large, the road, or words; nothing is supposed to be wrong. */
    sealed interface AtLarge extends Question {
        @Override
        default List<Fault> faults() {
            return List.of();
        }
    }

    /**
     * What the gears come to on the road.
     *
     * @param gears names; empty for all
     * @param given numbers that hold instead of those of the layout, or at which it is asked
     */
    record OnTheRoad(String layout, RoadWanted wanted, List<String> gears, Given given) implements AtLarge {}

    /**
     * The torque that comes of the engine's.
     *
     * @param gears names; empty for all
     * @param part id of a part that it is asked at; empty for the output
     */
    record TorqueAt(String layout, List<String> gears, Optional<String> part, Given given) implements AtLarge {}

    /**
     * What sets this box apart from another.
     *
     * @param other id of a layout
     * @param gears names of the gears that are compared; empty for all
     */
    record Compared(String layout, String other, List<String> gears) implements AtLarge {}

    /**
     * What sounds at a frequency, or at which frequencies it sounds where none is given.
     *
     * @param gear its name; empty where none is told
     * @param neutral whether the lever is in neutral
     */
    record Sounding(String layout, Optional<String> gear, boolean neutral, Given given) implements AtLarge {}

    /** How often the teeth of a gear meet, wherever it is: it has so many and turns so fast. */
    record MeshFrequency(String layout, Given given) implements AtLarge {}

    /** What a differential does. */
    record WheelsDo(String layout, WheelsCase when) implements AtLarge {}

    /** What turns while the vehicle is towed in neutral, the engine stopped. */
    record Towed(String layout) implements AtLarge {}

    /**
     * What terms of the trade mean, and where that is in this box.
     *
     * @param terms their names in the packs
     */
    record Meaning(String layout, List<String> terms) implements AtLarge {}

    /**
     * How something comes about.
     *
     * @param subject its name in the packs
     */
    record Explained(String layout, String subject) implements AtLarge {}

    /**
     * Which gear it is when something stands to a side.
     *
     * @param part id of what is moved or moves; empty for whatever can
     * @param side by its word; empty for both
     */
    record WhichGear(String layout, Optional<String> part, Optional<String> side) implements AtLarge {}

    /** What a part is for, and where it is. */
    record WhatFor(String layout, String part) implements AtLarge {}

    /**
     * How many teeth.
     *
     * @param parts ids of gears; empty for all
     */
    record TeethOf(String layout, List<String> parts) implements AtLarge {}
}
