package org.layshaft.engine.symptom;

import java.util.Map;
import java.util.Set;
import org.layshaft.engine.symptom.Concerned.Between;
import org.layshaft.kb.layout.Differential;

/** How everything turns and is loaded in one situation, with one gear selected or in neutral. Immutable. */
public final class Moment {
    /** Nothing turns. */
    static final Moment STILL = new Moment(null, Set.of(), Map.of(), false, true);

    private final Turned turned;
    private final Set<String> carrying;
    private final Map<String, Set<Flank>> flanks;
    private final boolean releasePressed;
    private final boolean wheelsCanRoll;

    /**
     * @param carrying bodies under load
     * @param flanks by gear, the loaded sides of its teeth
     * @param releasePressed whether the pedal is down, so that the release bearing turns under load
     * @param wheelsCanRoll whether nothing ties wheels that must turn unlike
     */
    Moment(
            Turned turned,
            Set<String> carrying,
            Map<String, Set<Flank>> flanks,
            boolean releasePressed,
            boolean wheelsCanRoll) {
        this.turned = turned;
        this.carrying = carrying;
        this.flanks = flanks;
        this.releasePressed = releasePressed;
        this.wheelsCanRoll = wheelsCanRoll;
    }

    /** Whether this body turns for certain. */
    public boolean turns(String body) {
        return turned != null && turned.turns(body);
    }

    /** Whether the two touch and turn unlike, so that what lies between them rolls or rubs. */
    public boolean turnUnlike(Between pair) {
        boolean touch = releasePressed || !pair.outer().equals(Concerned.CLUTCH_FINGERS);
        return turned != null && touch && turned.turnUnlike(pair.inner(), pair.outer());
    }

    /** Whether the two sides of a differential turn unlike. */
    public boolean sidesDiffer(Differential differential) {
        return turnUnlike(
                new Between(differential.sides().get(0), differential.sides().get(1)));
    }

    /** Whether this body is under load. */
    public boolean carries(String body) {
        return carrying.contains(body);
    }

    /** Whether teeth of this gear are loaded on this side. */
    public boolean carriesOn(String gear, Flank flank) {
        return flanks.getOrDefault(gear, Set.of()).contains(flank);
    }

    /** Whether wheels would have to turn unlike and cannot. */
    public boolean wheelsAreTied() {
        return !wheelsCanRoll;
    }
}
