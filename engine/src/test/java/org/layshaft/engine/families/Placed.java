package org.layshaft.engine.families;

import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Statics;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;

/** A layout of Saltmarsh with its sleeves, sliding gears and clutches standing somewhere. */
record Placed(Layout layout, Stance stance) {

    static Placed of(String layout) {
        return new Placed(Boxes.the(layout), Stance.NEUTRAL);
    }

    Placed with(String member, Side side) {
        return new Placed(layout, stance.with(member, side));
    }

    /** With a lever put to the place that is called so. */
    Placed with(String lever, String called) {
        if (lever(lever).neutralCalled().filter(called::equals).isPresent()) {
            return this;
        }
        return with(lever(lever).places().stream()
                .filter(place -> place.called().filter(called::equals).isPresent())
                .findFirst()
                .orElseThrow());
    }

    /** With the rails pushed that a place of a lever pushes. */
    Placed with(Lever.Place place) {
        Placed placed = this;
        for (Map.Entry<String, Side> push : place.pushes().entrySet()) {
            List<String> forks = layout.the(Rail.class, push.getKey()).forks();
            for (String member : forks.stream()
                    .map(fork -> layout.the(Fork.class, fork).member())
                    .toList()) {
                if (layout.member(member).at(push.getValue()).isPresent()) {
                    placed = placed.with(member, push.getValue());
                }
            }
        }
        return placed;
    }

    Lever lever(String id) {
        return layout.levers().stream()
                .filter(lever -> lever.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    Train train() {
        return new TrainBuilder(layout, Changes.NONE).at(stance);
    }

    Motion motion() {
        return TrainSolver.solve(train());
    }

    Outcome outcome() {
        return motion().outcome();
    }

    Fraction ratio() {
        return motion().ratio()
                .orElseThrow(() ->
                        new AssertionError("%s does not drive at %s: %s".formatted(layout.name(), stance, outcome())));
    }

    /** Turns for one turn of the input. */
    Fraction speed(String body) {
        return motion().speedOf(body).orElseThrow();
    }

    Balance.Torques torques() {
        return Statics.of(train()).torques().orElseThrow();
    }

    /** What a connection puts on a body, with a torque of 1 on the input. */
    Fraction torque(String connection, String body) {
        Connection found = train().connections().stream()
                .filter(each -> each.id().equals(connection))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no connection '%s'".formatted(connection)));
        return torques().on(found).get(body);
    }
}
