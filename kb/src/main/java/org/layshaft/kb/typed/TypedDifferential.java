package org.layshaft.kb.typed;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.LimitedSlip;

/**
 * A differential as typed.
 *
 * @param ringGear the gear on its case; empty where a shaft drives the case
 * @param on the shaft that its case is fixed on
 * @param sides what its side gears turn
 * @param limitedSlip what resists a difference of speed
 * @param rigid whether its half-shafts have no joints, as in an axle of one piece
 */
public record TypedDifferential(
        String pointer,
        String id,
        Naming naming,
        Optional<TypedGear> ringGear,
        Optional<Reference> on,
        Sides sides,
        Optional<LimitedSlip> limitedSlip,
        boolean rigid) {

    /** The two things that the side gears turn. */
    public sealed interface Sides {
        List<Reference> references();

        /** The same as a part of a unit. */
        Sides within(UnitNames unit);

        /** Half-shafts with wheels, by where they go: {@code left}. */
        record HalfShafts(List<Reference> references) implements Sides {
            @Override
            public Sides within(UnitNames unit) {
                return new HalfShafts(unit.references(references));
            }
        }

        /** Shafts typed elsewhere. */
        record Shafts(List<Reference> references) implements Sides {
            @Override
            public Sides within(UnitNames unit) {
                return new Shafts(unit.references(references));
            }
        }
    }

    /** The id of the half-shaft that goes there: {@code left-half-shaft}. */
    public static String halfShaft(String side) {
        return side + "-half-shaft";
    }

    /** Ids of the half-shafts or shafts that its side gears turn. */
    public List<String> sideIds() {
        return sides.references().stream()
                .map(side -> sides instanceof Sides.HalfShafts ? halfShaft(side.id()) : side.id())
                .toList();
    }

    TypedDifferential within(UnitNames unit) {
        return new TypedDifferential(
                unit.pointer(),
                unit.id(id),
                unit.naming(naming),
                ringGear.map(gear -> gear.within(unit)),
                unit.reference(on),
                sides.within(unit),
                limitedSlip,
                rigid);
    }
}
