package org.layshaft.kb.typed;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.Side;

/**
 * What one lever works: rails, gate and interlock as typed, defaults filled in.
 *
 * @param prefix goes before the ids of the interlock and its pieces where it is not the gear lever: {@code range-}
 * @param neutral whether the lever has a place in which it engages nothing
 * @param neutralCalled what that place is called, where typed
 * @param drum the places of a drum, in order; empty where each rail is pushed by itself
 * @param workedBy what is between lever and rails, where typed
 * @param lockOut the rail and side that are barred until they are meant, at most one
 * @param gate base names of the rails in the order in which the lever passes them
 */
public record TypedSelector(
        String pointer,
        String prefix,
        List<TypedRail> rails,
        List<Reference> gate,
        InterlockKind interlock,
        boolean neutral,
        Optional<String> neutralCalled,
        List<TypedPlace> drum,
        Optional<WorkedBy> workedBy,
        Optional<LockOut> lockOut) {
    public TypedSelector {
        rails = List.copyOf(rails);
        gate = List.copyOf(gate);
        drum = List.copyOf(drum);
    }

    /** Of a lever that moves no rails. */
    static TypedSelector withoutRails(String pointer) {
        return new TypedSelector(
                pointer,
                "",
                List.of(),
                List.of(),
                InterlockKind.NONE,
                true,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    TypedSelector within(UnitNames unit) {
        return new TypedSelector(
                unit.pointer(),
                unit.prefix(prefix),
                rails.stream().map(rail -> rail.within(unit)).toList(),
                unit.references(gate),
                interlock,
                neutral,
                neutralCalled,
                drum.stream().map(place -> place.within(unit)).toList(),
                workedBy,
                lockOut.map(lock -> new LockOut(unit.reference(lock.rail()), lock.side())));
    }

    /** What keeps the lever from a place until it is meant: mostly reverse. */
    public record LockOut(Reference rail, Side side) {}
}
