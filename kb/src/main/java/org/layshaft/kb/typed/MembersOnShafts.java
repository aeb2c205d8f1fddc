package org.layshaft.kb.typed;

import java.util.List;
import org.layshaft.kb.layout.Seat;

/** Picks out what is put in and out of engagement. */
final class MembersOnShafts {
    private MembersOnShafts() {}

    static List<TypedMember> of(List<TypedShaft> shafts) {
        return shafts.stream()
                .flatMap(shaft -> shaft.along().stream())
                .filter(MembersOnShafts::isMoved)
                .map(TypedMember.class::cast)
                .toList();
    }

    private static boolean isMoved(TypedItem item) {
        return item instanceof TypedSleeve
                || item instanceof TypedInnerClutch
                || item instanceof TypedGear gear && gear.seat() == Seat.SLIDING;
    }
}
