package org.layshaft.kb.typed;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Side;

/**
 * A gear as typed, the layout's own module and helix angle filled in.
 *
 * @param teeth empty where they are missing or no whole number
 * @param hand which way its helix winds, where typed
 * @param pressureAngleDeg normal pressure angle
 * @param internal whether its teeth are on the inside of a ring
 * @param crown for a bevel gear that says so, the side of its mate on which it sits
 * @param meshes what it is always in mesh with, as far as typed at this gear
 * @param chained what a chain or belt joins it to, as far as typed at this gear
 * @param sides for a sliding gear, what it engages on each side
 */
public record TypedGear(
        String pointer,
        String id,
        Naming naming,
        Seat seat,
        OptionalInt teeth,
        OptionalDouble moduleMm,
        double helixDeg,
        Optional<Hand> hand,
        double pressureAngleDeg,
        boolean internal,
        Optional<Crown> crown,
        List<Reference> meshes,
        List<Reference> chained,
        Map<Side, TypedSide> sides)
        implements TypedItem, TypedMember {
    public TypedGear {
        meshes = List.copyOf(meshes);
        chained = List.copyOf(chained);
        sides = TypedMember.inOrder(sides);
    }

    @Override
    public String base() {
        return id;
    }

    @Override
    public boolean hasTeethToMesh() {
        return true;
    }

    /** The gear whose teeth come into mesh when it is slid: itself. */
    @Override
    public String meshingGear() {
        return id;
    }

    @Override
    public TypedGear within(UnitNames unit) {
        return new TypedGear(
                unit.pointer(),
                unit.id(id),
                unit.naming(naming),
                seat,
                teeth,
                moduleMm,
                helixDeg,
                hand,
                pressureAngleDeg,
                internal,
                crown,
                unit.references(meshes),
                unit.references(chained),
                unit.sides(sides));
    }
}
