package org.layshaft.engine.road;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;

/**
 * What a tyre's size code says of it.
 *
 * @param code as written, without load index and speed symbol: {@code 205/55 R16}
 * @param freeDiameterMm outside diameter that the code stands for, neither loaded nor worn
 * @param build how the casing is laid
 */
public record TyreSize(String code, Fraction freeDiameterMm, Build build) {

    /** How the casing is laid; it decides how far a loaded tyre rolls. */
    public enum Build {
        RADIAL,
        CROSS_PLY,
        BELTED
    }

    /**
     * Reads {@code 205/55 R16}, {@code 205/55ZR16 91W}, {@code LT235/75R15 104/101S} or {@code 31x10.50R15}.
     *
     * @throws ImpossibleFactsException where the code makes no sense, with everything that is wrong with it
     */
    public static TyreSize read(String code) {
        return TyreCode.read(code);
    }
}
