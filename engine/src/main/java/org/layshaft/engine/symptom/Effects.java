package org.layshaft.engine.symptom;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.train.Changes;
import org.layshaft.kb.layout.Side;

/**
 * What faults, with everything told, change: equations, mechanism, clutch.
 *
 * @param stuck by sleeve or sliding gear, where it cannot be moved from; empty for neutral
 * @param left the same for those that no longer follow their rail
 * @param unreached places that are no longer reached, as {@link Place}
 * @param gonePieces pieces of interlocks that are gone
 * @param lostRails rails that the lever does not find
 * @param ringless places whose speeds no ring matches any more
 * @param drags whether the clutch drives on with the pedal down
 * @param slips whether it does not drive with the pedal up
 * @param noDrive whether no drive gets through, whatever turns
 */
record Effects(
        Changes changes,
        Map<String, Optional<Side>> stuck,
        Map<String, Optional<Side>> left,
        Set<Place> unreached,
        Set<String> gonePieces,
        Set<String> lostRails,
        Set<Place> ringless,
        boolean drags,
        boolean slips,
        boolean noDrive) {
    static final Effects NONE =
            new Effects(Changes.NONE, Map.of(), Map.of(), Set.of(), Set.of(), Set.of(), Set.of(), false, false, false);

    /** A sleeve or sliding gear to one side. */
    record Place(String member, Side side) {}

    /** Whether everything turns, engages and is driven as in the sound box. */
    boolean changeNothing() {
        return equals(NONE);
    }

    Effects and(Effects other) {
        if (other.changeNothing()) {
            return this;
        }
        return changeNothing()
                ? other
                : new Effects(
                        changes.and(other.changes),
                        both(stuck, other.stuck),
                        both(left, other.left),
                        both(unreached, other.unreached),
                        both(gonePieces, other.gonePieces),
                        both(lostRails, other.lostRails),
                        both(ringless, other.ringless),
                        drags || other.drags,
                        slips || other.slips,
                        noDrive || other.noDrive);
    }

    private static <V> Map<String, V> both(Map<String, V> one, Map<String, V> other) {
        Map<String, V> both = new HashMap<>(other);
        both.putAll(one);
        return both;
    }

    private static <E> Set<E> both(Set<E> one, Set<E> other) {
        Set<E> both = new HashSet<>(one);
        both.addAll(other);
        return both;
    }
}
