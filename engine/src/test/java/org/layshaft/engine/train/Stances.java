package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/** The stances that a layout can be brought into, likely or not. */
public final class Stances {
    private Stances() {}

    /** Every product of the places of its members; neutral first. */
    public static List<Stance> all(Layout layout) {
        List<Stance> stances = List.of(Stance.NEUTRAL);
        for (ShiftMember member : layout.members()) {
            List<Stance> more = new ArrayList<>(stances);
            for (Side side : member.sides().keySet()) {
                stances.forEach(stance -> more.add(stance.with(member.part(), side)));
            }
            stances = more;
        }
        return stances;
    }
}
