package org.layshaft.web.drawing;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;

/**
 * What of a box is to be seen.
 *
 * @param stance where sleeves and sliding gears stand
 * @param motion how everything turns then; empty draws the box at rest, with no word on what moves
 * @param faultyParts ids of parts to mark as faulty
 * @param meantParts ids of parts to ring as those spoken of
 * @param linkOf the address behind a part, by id; empty for a part that is no link
 * @param idPrefix put before every id in the drawing, so that several can stand on one page
 */
public record View(
        Stance stance,
        Optional<Motion> motion,
        Set<String> faultyParts,
        Set<String> meantParts,
        Function<String, Optional<String>> linkOf,
        String idPrefix) {
    public View {
        faultyParts = Set.copyOf(faultyParts);
        meantParts = Set.copyOf(meantParts);
    }

    /** The box in neutral and at rest, without marks and links. */
    public static View plain() {
        return new View(Stance.NEUTRAL, Optional.empty(), Set.of(), Set.of(), part -> Optional.empty(), "box-");
    }
}
