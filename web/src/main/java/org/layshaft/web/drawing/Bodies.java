package org.layshaft.web.drawing;

import java.util.Optional;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/** How each part moves, where its motion may be told of the body that it is fast to. */
record Bodies(Layout layout, Motion motion) {

    /** What a part does as the engine turns. */
    enum State {
        TURNS,
        STANDS_STILL,
        /** Nothing drives it and nothing holds it. */
        NOT_DRIVEN,
        /** Not a thing that turns. */
        NONE;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    State state(Part part) {
        if (!turnsAtAll(part)) {
            return State.NONE;
        }
        return speed(part)
                .map(speed -> speed.isZero() ? State.STANDS_STILL : State.TURNS)
                .orElse(State.NOT_DRIVEN);
    }

    /** Turns for one turn of the input; empty where nothing fixes it. */
    Optional<Fraction> speed(Part part) {
        return motion.speedOf(part.id())
                .or(() -> fastTo(part)
                        .flatMap(id -> Optional.ofNullable(layout.parts().get(id)))
                        .flatMap(this::speed));
    }

    private static boolean turnsAtAll(Part part) {
        return part instanceof Shaft
                || part instanceof Gear
                || part instanceof Sleeve
                || part instanceof Hub
                || part instanceof BlockingRing
                || part instanceof ClutchingTeeth
                || part instanceof Differential
                || part instanceof HalfShaft;
    }

    private Optional<String> fastTo(Part part) {
        if (part instanceof Gear gear) {
            boolean splined = gear.seat() == Seat.SLIDING
                    && layout.find(Shaft.class, gear.carrier())
                            .filter(shaft -> !shaft.held())
                            .isPresent();
            return gear.seat() == Seat.FIXED || gear.seat() == Seat.RIM || splined
                    ? Optional.of(gear.carrier())
                    : Optional.empty();
        }
        if (part instanceof Sleeve sleeve) {
            return Optional.of(sleeve.hub());
        }
        if (part instanceof Hub hub) {
            return Optional.of(hub.shaft());
        }
        if (part instanceof BlockingRing ring) {
            return Optional.of(ring.sleeve());
        }
        if (part instanceof ClutchingTeeth teeth) {
            return Optional.of(teeth.gear());
        }
        if (part instanceof Clutch clutch) {
            return Optional.of(clutch.drives());
        }
        return part instanceof Bearing bearing ? Optional.of(bearing.inner()) : Optional.empty();
    }
}
