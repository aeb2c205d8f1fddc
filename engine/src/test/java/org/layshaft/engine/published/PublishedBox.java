package org.layshaft.engine.published;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/** A box that somebody else has printed figures of, typed in as a layout. */
record PublishedBox(Layout layout) {

    /** The layout of this id among the resources of the tests. */
    static PublishedBox of(String id) {
        return new PublishedBox(Boxes.typed("published", id));
    }

    Motion at(Stance stance) {
        return TrainSolver.solve(new TrainBuilder(layout, Changes.NONE).at(stance));
    }

    Motion engaged(String member, Side side) {
        return at(Stance.NEUTRAL.with(member, side));
    }

    /** Neutral, and every stance with one member engaged. */
    List<Stance> oneAtATime() {
        List<Stance> stances = new ArrayList<>(List.of(Stance.NEUTRAL));
        for (ShiftMember member : layout.members()) {
            member.sides().keySet().forEach(side -> stances.add(Stance.NEUTRAL.with(member.part(), side)));
        }
        return stances;
    }
}
