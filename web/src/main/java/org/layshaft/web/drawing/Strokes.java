package org.layshaft.web.drawing;

import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;

/** How far forks, and what they move, go to either side. */
record Strokes(Layout layout) {
    /** Takes a sleeve over the blocking ring and most of the clutching teeth. */
    static final double OVER_TEETH = 22;
    /** Takes a narrow gear out of the plane of its mate altogether. */
    static final double INTO_MESH = 36;

    /** Toward the front is negative. */
    static double signed(Side side, double length) {
        return side == Side.FRONT ? -length : length;
    }

    /** What this sleeve or sliding gear travels to that side. */
    double of(String member, Side side) {
        boolean meshes = layout.members().stream()
                .filter(one -> one.part().equals(member))
                .flatMap(one -> one.at(side).stream())
                .anyMatch(Engagement.Meshes.class::isInstance);
        return meshes ? INTO_MESH : OVER_TEETH;
    }

    /** What this rail travels to that side: as far as the fork on it that goes farthest. */
    double of(Rail rail, Side side) {
        return layout.all(Fork.class)
                .filter(fork -> fork.rail().equals(rail.id()))
                .mapToDouble(fork -> of(fork.member(), side))
                .max()
                .orElse(OVER_TEETH);
    }

    /** Whether its rail takes this to a side where it engages nothing itself. */
    boolean goesAlong(String member, Side side) {
        return layout.forkOf(member).stream()
                .flatMap(fork -> layout.the(Rail.class, fork.rail()).forks().stream())
                .map(fork -> layout.the(Fork.class, fork).member())
                .filter(other -> !other.equals(member))
                .anyMatch(other -> layout.member(other).at(side).isPresent());
    }

    double displacement(String member, Stance stance) {
        // A clutch closes where it stands.
        if (layout.find(Clutch.class, member).isPresent()) {
            return 0;
        }
        return stance.of(member).map(side -> signed(side, of(member, side))).orElse(0.0);
    }

    double displacement(Rail rail, Stance stance) {
        return layout.all(Fork.class)
                .filter(fork -> fork.rail().equals(rail.id()))
                .flatMap(fork -> stance.of(fork.member()).stream())
                .findFirst()
                .map(side -> signed(side, of(rail, side)))
                .orElse(0.0);
    }
}
