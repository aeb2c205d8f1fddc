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
 * @param from where it is seen from
 * @param moveOf the address behind a move by hand; empty where nothing is to be moved
 * @param told what is told of parts besides how they move
 * @param ink colours, or black and white
 */
public record View(
        Stance stance,
        Optional<Motion> motion,
        Set<String> faultyParts,
        Set<String> meantParts,
        Function<String, Optional<String>> linkOf,
        String idPrefix,
        From from,
        Function<Move, Optional<String>> moveOf,
        Told told,
        Printing ink) {

    /** Where a box is seen from. */
    public enum From {
        /** Along its length, the clutch end on the left. */
        SIDE,
        /** Along its shafts, from the clutch end. */
        END
    }

    /** What a drawing is printed with. */
    public enum Printing {
        COLOURS,
        /** White, black and hatching, for a copier. */
        BLACK
    }

    public View {
        faultyParts = Set.copyOf(faultyParts);
        meantParts = Set.copyOf(meantParts);
    }

    /** From the side and in colours, with nothing to be moved. */
    public View(
            Stance stance,
            Optional<Motion> motion,
            Set<String> faultyParts,
            Set<String> meantParts,
            Function<String, Optional<String>> linkOf,
            String idPrefix) {
        this(
                stance,
                motion,
                faultyParts,
                meantParts,
                linkOf,
                idPrefix,
                From.SIDE,
                move -> Optional.empty(),
                Told.NOTHING,
                Printing.COLOURS);
    }

    /** The box in neutral and at rest, without marks and links. */
    public static View plain() {
        return new View(Stance.NEUTRAL, Optional.empty(), Set.of(), Set.of(), part -> Optional.empty(), "box-");
    }

    public View from(From other) {
        return new View(stance, motion, faultyParts, meantParts, linkOf, idPrefix, other, moveOf, told, ink);
    }

    public View moving(Function<Move, Optional<String>> other) {
        return new View(stance, motion, faultyParts, meantParts, linkOf, idPrefix, from, other, told, ink);
    }

    public View telling(Told other) {
        return new View(stance, motion, faultyParts, meantParts, linkOf, idPrefix, from, moveOf, other, ink);
    }

    public View in(Printing other) {
        return new View(stance, motion, faultyParts, meantParts, linkOf, idPrefix, from, moveOf, told, other);
    }
}
