package org.layshaft.kb.layout;

/**
 * A half-shaft, from a side gear of the differential to a wheel.
 *
 * @param wheel what the wheel at its end is called: {@code left wheel}
 */
public record HalfShaft(Named named, String differential, String wheel) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.HALF_SHAFT;
    }
}
