package org.layshaft.web.asking.answering;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.BlockingRing;
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
import org.layshaft.web.asking.Saying;

/** How the parts of a box turn in one motion. */
final class Turning {
    private final Layout layout;
    private final Motion motion;
    private final Names names;

    Turning(Facts facts, Motion motion) {
        this.layout = facts.box().layout();
        this.names = facts.names();
        this.motion = motion;
    }

    /** What turns by itself, without the gears that are fixed on it, with the pieces of a cut shaft, in the order of the layout. */
    List<String> bodies() {
        Stream<String> parts = layout.parts().values().stream()
                .filter(part -> part instanceof Gear
                        || part instanceof Shaft shaft && !shaft.held()
                        || part instanceof Differential
                        || part instanceof HalfShaft)
                .filter(part -> !goesWithItsCarrier(part))
                .map(Part::id)
                .filter(id -> motion.speeds().containsKey(id) || !isInPieces(id));
        Stream<String> pieces =
                motion.speeds().keySet().stream().filter(body -> !layout.parts().containsKey(body) && !isWheel(body));
        return Stream.concat(parts, pieces).toList();
    }

    /** Turns for one turn of the input; empty where the input does not fix it. */
    Optional<Fraction> speed(String body) {
        return motion.speedOf(body);
    }

    /** The body that a part turns with; empty for what never turns. */
    Optional<String> bodyOf(Part part) {
        if (part instanceof BlockingRing ring) {
            return Optional.of(ring.sleeve());
        } else if (part instanceof ClutchingTeeth teeth) {
            return Optional.of(teeth.gear());
        } else if (part instanceof Hub hub) {
            return Optional.of(hub.sleeve());
        }
        boolean turns = part instanceof Gear
                || part instanceof Sleeve
                || part instanceof Shaft shaft && !shaft.held()
                || part instanceof Differential
                || part instanceof HalfShaft;
        return turns ? Optional.of(part.id()) : Optional.empty();
    }

    /** One body's turning as the end of a sentence: {@code turns the opposite way to the engine, ...}. */
    String said(String body) {
        Optional<Fraction> speed = speed(body);
        if (speed.isEmpty()) {
            return "is free to turn; the engine does not fix how fast";
        } else if (speed.get().isZero()) {
            return "stands still";
        }
        boolean same = speed.get().signum() > 0;
        return "turns %s, %s for each turn of the engine"
                .formatted(
                        same ? "the same way as the engine" : "the opposite way to the engine",
                        Saying.turns(speed.get().absolute()));
    }

    /** Gears that turn on the shaft they sit on, each as a clause. */
    List<String> onTheirShafts() {
        return layout.all(Gear.class)
                .filter(Gear::isFree)
                .filter(gear -> onShaft(gear).filter(slip -> !slip.isZero()).isPresent())
                .map(gear -> "%s on %s, %s"
                        .formatted(
                                names.the(gear.id()),
                                names.the(gear.carrier()),
                                Saying.number(onShaft(gear).get().absolute())))
                .toList();
    }

    private Optional<Fraction> onShaft(Gear gear) {
        boolean held =
                layout.find(Shaft.class, gear.carrier()).filter(Shaft::held).isPresent();
        Optional<Fraction> shaft = held ? Optional.of(Fraction.ZERO) : speed(gear.carrier());
        return speed(gear.id()).flatMap(speed -> shaft.map(speed::minus));
    }

    /** Whether a gear is fixed to what carries it, and still turns with it. */
    private boolean goesWithItsCarrier(Part part) {
        return part instanceof Gear gear
                && (gear.seat() == Seat.FIXED || gear.seat() == Seat.RIM)
                && !isInPieces(gear.carrier())
                && speed(gear.id()).equals(speed(gear.carrier()));
    }

    private boolean isInPieces(String shaft) {
        return layout.find(Shaft.class, shaft).isPresent()
                && motion.speeds().keySet().stream()
                        .anyMatch(body -> !layout.parts().containsKey(body)
                                && ShaftPiece.shaftOf(body).equals(shaft));
    }

    private boolean isWheel(String body) {
        return layout.all(HalfShaft.class).anyMatch(shaft -> shaft.wheel().equals(body));
    }
}
