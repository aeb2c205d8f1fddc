package org.layshaft.web.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** How each part moves, where its motion may be told of the body that it is fast to. */
record Bodies(Layout layout, Motion motion) {

    /** Between the id of a cut shaft and the word for the end that a piece of it is. */
    private static final String PIECE = "#";

    /** What a part does as the engine turns. */
    enum State {
        TURNS,
        STANDS_STILL,
        /** Nothing drives it and nothing holds it. */
        NOT_DRIVEN,
        /** Not a thing that turns. */
        NONE;

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    State state(Part part) {
        if (!turnsAtAll(part)) {
            return State.NONE;
        }
        List<Fraction> speeds = Stream.of(Side.values())
                .flatMap(end -> speedAt(part, end).stream())
                .toList();
        if (speeds.isEmpty()) {
            return State.NOT_DRIVEN;
        }
        return speeds.stream().allMatch(Fraction::isZero) ? State.STANDS_STILL : State.TURNS;
    }

    /** Turns of this end for one turn of the input: the two ends of a cut shaft each have their own. */
    Optional<Fraction> speedAt(Part part, Side end) {
        return motion.speedOf(part.id() + PIECE + end.word()).or(() -> isCut(part) ? Optional.empty() : speed(part));
    }

    private boolean isCut(Part part) {
        return Stream.of(Side.values()).anyMatch(end -> motion.speeds().containsKey(part.id() + PIECE + end.word()));
    }

    /** Whether this part, or a piece of it, carries power. */
    static boolean carries(Motion motion, String part) {
        return motion.carrying().contains(part)
                || Stream.of(Side.values()).anyMatch(end -> motion.carrying().contains(part + PIECE + end.word()));
    }

    /** Turns for one turn of the input; empty where nothing fixes it. */
    Optional<Fraction> speed(Part part) {
        return motion.speedOf(part.id())
                .or(() -> fastTo(part)
                        .flatMap(id -> Optional.ofNullable(layout.parts().get(id)))
                        .flatMap(this::speed));
    }

    private static boolean turnsAtAll(Part part) {
        return part instanceof Shaft shaft && !shaft.held() && shaft.carriedBy().isEmpty()
                || part instanceof Gear
                || part instanceof Sleeve
                || part instanceof Hub
                || part instanceof BlockingRing
                || part instanceof ClutchingTeeth
                || part instanceof DogRing
                || part instanceof Joint
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
        if (part instanceof Joint joint) {
            return Optional.of(joint.from());
        }
        if (part instanceof DogRing dogs) {
            return Optional.of(dogs.shaft());
        }
        if (part instanceof Differential differential) {
            return differential.shaft();
        }
        if (part instanceof Clutch clutch) {
            return Optional.of(clutch.drives());
        }
        return part instanceof Bearing bearing ? Optional.of(bearing.inner()) : Optional.empty();
    }
}
