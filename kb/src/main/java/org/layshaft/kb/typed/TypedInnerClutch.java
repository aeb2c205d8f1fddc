package org.layshaft.kb.typed;

import java.util.Map;
import org.layshaft.kb.layout.Side;

/**
 * A clutch inside the box as typed, on the shaft that drives it.
 *
 * @param base the base name: {@code odd}
 * @param drives the shaft that it drives when it is closed
 */
public record TypedInnerClutch(String pointer, String base, Naming naming, Reference drives)
        implements TypedItem, TypedMember {
    @Override
    public String id() {
        return idOf(base);
    }

    /** The id of the clutch with this base name. */
    public static String idOf(String base) {
        return base + "-clutch";
    }

    @Override
    public Map<Side, TypedSide> sides() {
        return Map.of(Side.FRONT, new TypedSide.Closes(drives));
    }

    @Override
    public boolean hasTeethToMesh() {
        return false;
    }

    @Override
    public String meshingGear() {
        return id();
    }

    @Override
    public TypedInnerClutch within(UnitNames unit) {
        return new TypedInnerClutch(unit.pointer(), unit.id(base), unit.naming(naming), unit.reference(drives));
    }
}
