package org.layshaft.web.asking;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is asked. */
public enum Intent {
    GEARS_LEFT,
    WHAT_HAPPENS,
    RATIO,
    POWER_PATH,
    WHAT_TURNS,
    WHICH_WAY,
    TWO_AT_ONCE,
    WHY_NOT,
    SUSPECTS,
    FITS,
    FITS_HERE,
    SUPPLIED,
    PUT_IN,
    NEARER,
    AXLE_FOR,
    SPEED_GEAR,
    MEASURED,
    OTHER_TYRES,
    WHY_NONE,
    ROAD,
    TORQUE,
    COMPARE,
    FREQUENCY,
    MESH_FREQUENCY,
    DIFFERENTIAL,
    TOWED,
    DEFINE,
    EXPLAIN,
    WHICH_GEAR,
    WHAT_FOR,
    TEETH;

    private static final Set<Intent> OF_PARTS = EnumSet.range(FITS, OTHER_TYRES);

    private static final Map<Class<? extends Question.AtLarge>, Intent> AT_LARGE = Map.ofEntries(
            Map.entry(Question.OnTheRoad.class, ROAD),
            Map.entry(Question.TorqueAt.class, TORQUE),
            Map.entry(Question.Compared.class, COMPARE),
            Map.entry(Question.Sounding.class, FREQUENCY),
            Map.entry(Question.MeshFrequency.class, MESH_FREQUENCY),
            Map.entry(Question.WheelsDo.class, DIFFERENTIAL),
            Map.entry(Question.Towed.class, TOWED),
            Map.entry(Question.Meaning.class, DEFINE),
            Map.entry(Question.Explained.class, EXPLAIN),
            Map.entry(Question.WhichGear.class, WHICH_GEAR),
            Map.entry(Question.WhatFor.class, WHAT_FOR),
            Map.entry(Question.TeethOf.class, TEETH));

    /** As written in packs: {@code gears-left}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Intent> of(String word) {
        return Arrays.stream(values())
                .filter(intent -> intent.word().equals(word))
                .findFirst();
    }

    /** Whether it is about parts, and not about what works. */
    public boolean isOfParts() {
        return OF_PARTS.contains(this);
    }

    /** Whether it is about the box at large, the road or words. */
    public boolean isAtLarge() {
        return AT_LARGE.containsValue(this);
    }

    public static Intent of(Question question) {
        if (question instanceof Question.AtLarge) {
            return AT_LARGE.get(question.getClass());
        } else if (question instanceof Question.WhyNone) {
            return WHY_NONE;
        }
        if (question instanceof Question.GearsLeft) {
            return GEARS_LEFT;
        } else if (question instanceof Question.WhatHappens) {
            return WHAT_HAPPENS;
        } else if (question instanceof Question.RatioOf) {
            return RATIO;
        } else if (question instanceof Question.PowerPath) {
            return POWER_PATH;
        } else if (question instanceof Question.WhatTurns) {
            return WHAT_TURNS;
        } else if (question instanceof Question.WhichWay) {
            return WHICH_WAY;
        } else if (question instanceof Question.TwoAtOnce) {
            return TWO_AT_ONCE;
        } else if (question instanceof Question.Suspects) {
            return SUSPECTS;
        }
        if (question instanceof Question.Fits) {
            return FITS;
        } else if (question instanceof Question.FitsHere) {
            return FITS_HERE;
        } else if (question instanceof Question.Supplied) {
            return SUPPLIED;
        } else if (question instanceof Question.OtherTyres) {
            return OTHER_TYRES;
        } else if (question instanceof Question.PutIn) {
            return PUT_IN;
        } else if (question instanceof Question.Nearer) {
            return NEARER;
        } else if (question instanceof Question.AxleFor) {
            return AXLE_FOR;
        } else if (question instanceof Question.SpeedGear) {
            return SPEED_GEAR;
        } else if (question instanceof Question.Measured) {
            return MEASURED;
        }
        return WHY_NOT;
    }
}
