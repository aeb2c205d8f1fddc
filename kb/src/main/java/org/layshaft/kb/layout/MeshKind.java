package org.layshaft.kb.layout;

/** How two gears turn each other. */
public enum MeshKind {
    /** Teeth on the outside of both: they turn opposite ways. */
    EXTERNAL(-1),
    /** A gear inside a ring with teeth on its inside: they turn the same way. */
    INTERNAL(1),
    /** Two sprockets with a chain or toothed belt around them: they turn the same way. */
    CHAIN(1),
    /** A bevel or hypoid pair; the sense of a cross shaft is counted so that both speeds have one sign. */
    BEVEL(1),
    /** A bevel or hypoid pair with its crown on the other side, so that the cross shaft turns the other way. */
    BEVEL_OPPOSITE(-1);

    private final int sense;

    MeshKind(int sense) {
        this.sense = sense;
    }

    /** 1 where both turn the same way, -1 where they turn opposite ways. */
    public int sense() {
        return sense;
    }

    public boolean isBevel() {
        return this == BEVEL || this == BEVEL_OPPOSITE;
    }
}
