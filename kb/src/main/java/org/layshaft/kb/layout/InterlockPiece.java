package org.layshaft.kb.layout;

import java.util.List;

/**
 * One piece of an interlock.
 *
 * @param form what it is
 * @param rails the two rails that a plunger lies between, the one rail that a pin passes through, or all the rails of a
 *     plate, collar or drum
 */
public record InterlockPiece(Named named, Form form, List<String> rails) implements Part {
    /** The forms that a piece takes. */
    public enum Form {
        PLUNGER,
        PIN,
        PLATE,
        COLLAR,
        DRUM
    }

    public InterlockPiece {
        rails = List.copyOf(rails);
    }

    @Override
    public PartKind kind() {
        return PartKind.INTERLOCK_PIECE;
    }
}
