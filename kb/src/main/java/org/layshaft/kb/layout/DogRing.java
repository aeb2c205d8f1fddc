package org.layshaft.kb.layout;

/**
 * Clutching teeth without a gear: fixed on a shaft, or standing in the case, for a sleeve to slide over.
 *
 * @param shaft id of the shaft that it is fixed on; of a held one where it stands in the case
 */
public record DogRing(Named named, String shaft) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.DOG_RING;
    }
}
