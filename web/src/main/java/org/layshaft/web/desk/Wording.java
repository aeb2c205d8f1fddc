package org.layshaft.web.desk;

import org.layshaft.engine.api.Effort;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Verdict;
import org.layshaft.kb.failure.Commonness;
import org.layshaft.kb.failure.Depth;

/** Findings of the engine in plain words. */
public final class Wording {
    private Wording() {}

    public static String ofGear(Verdict verdict) {
        return switch (verdict) {
            case WORKS -> "works";
            case WORKS_WITH_NOTICE -> "works, with something noticed";
            case UNCERTAIN -> "may work or may not";
            case LOST -> "lost";
            case LOCKS -> "locks the box";
        };
    }

    public static String ofNeutral(NeutralVerdict neutral) {
        return neutral.exists() ? ofNeutral(neutral.verdict()) : "there is none, it always drives";
    }

    public static String ofNeutral(Verdict verdict) {
        return switch (verdict) {
            case WORKS -> "no drive, as it should be";
            case WORKS_WITH_NOTICE -> "no drive, and something shows";
            case UNCERTAIN -> "may drive or may not";
            case LOST -> "drives in neutral";
            case LOCKS -> "locks the box";
        };
    }

    /** What two gears do that are engaged at once. */
    public static String ofBoth(Motion.Outcome outcome) {
        return switch (outcome) {
            case DRIVES -> "they drive together";
            case NEUTRAL -> "harmless: neither drives";
            case LOCKED -> "the box locks";
            case INPUT_HELD -> "the input is held";
            case OUTPUT_HELD -> "the output is held";
        };
    }

    /** How often a failure is met. */
    public static String of(Commonness common) {
        return switch (common) {
            case COMMON -> "often met";
            case OCCASIONAL -> "met now and then";
            case RARE -> "rare";
        };
    }

    /** What trouble it is to try something. */
    public static String of(Effort effort) {
        return switch (effort) {
            case STANDING -> "where the vehicle stands";
            case AT_THE_LEVER -> "at lever and pedal, where the vehicle stands";
            case ROAD_TEST -> "on the road";
            case FROM_OUTSIDE -> "from outside, with nothing opened";
            case PLUG -> "a plug is drawn";
            case COVER -> "a cover comes off";
            case BOX_OUT -> "the box comes out";
            case STRIPPED -> "the box is taken to pieces";
        };
    }

    /** How well a suspect explains something. */
    public static String of(Suspect.Degree degree) {
        return switch (degree) {
            case SURELY -> "for certain";
            case PERHAPS -> "it may";
            case IN_PART -> "in part: something of the sort";
        };
    }

    /** How far one must dismantle to see a failure. */
    public static String of(Depth depth) {
        return switch (depth) {
            case OUTSIDE -> "seen from outside, with nothing opened";
            case PLUG -> "seen with a plug drawn";
            case COVER -> "seen with a cover or a drive shaft off";
            case BOX_OUT -> "seen with the box out";
            case STRIPPED -> "seen with the box in pieces";
        };
    }

    public static String of(Turning.Sense sense) {
        return switch (sense) {
            case SAME -> "the input's way";
            case OPPOSITE -> "against the input";
            case STANDS -> "stands";
            case FREE -> "free to turn or stand";
        };
    }
}
