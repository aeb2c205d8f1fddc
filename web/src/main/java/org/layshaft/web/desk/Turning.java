package org.layshaft.web.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/**
 * How one part turns.
 *
 * @param part its id; of a shaft that is cut, the id of one piece
 * @param speed its turns for one turn of the input; empty where the input does not fix it
 */
public record Turning(String part, String name, Optional<Fraction> speed, Sense sense) {

    /** Which way it turns, as against the input. */
    public enum Sense {
        SAME,
        OPPOSITE,
        STANDS,
        /** The input does not say. */
        FREE
    }

    /** Every part that can turn, in the order of the layout, and then the pieces of shafts. */
    public static List<Turning> of(Layout layout, Names names, Motion motion) {
        Set<String> fixed = motion.speeds().keySet();
        List<String> inPieces = fixed.stream()
                .filter(body -> !layout.parts().containsKey(body))
                .map(ShaftPiece::shaftOf)
                .toList();
        Set<String> turning = layout.parts().values().stream()
                .filter(Turning::canTurn)
                .map(Part::id)
                .filter(part -> !inPieces.contains(part))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        turning.addAll(fixed);
        return turning.stream()
                .map(part -> of(part, names.of(part), motion.speedOf(part)))
                .toList();
    }

    private static Turning of(String part, String name, Optional<Fraction> speed) {
        return new Turning(part, name, speed, speed.map(Turning::sense).orElse(Sense.FREE));
    }

    private static Sense sense(Fraction speed) {
        if (speed.isZero()) {
            return Sense.STANDS;
        }
        return speed.signum() > 0 ? Sense.SAME : Sense.OPPOSITE;
    }

    private static boolean canTurn(Part part) {
        return part instanceof Shaft shaft && !shaft.held()
                || part instanceof Gear
                || part instanceof Sleeve
                || part instanceof Differential
                || part instanceof HalfShaft;
    }
}
