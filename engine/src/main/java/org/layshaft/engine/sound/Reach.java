package org.layshaft.engine.sound;

import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;

/**
 * How far from the plain order of a source it is looked for.
 *
 * @param harmonics the highest multiple, from 1 to 20; 1 is the plain order
 * @param sidebands how many steps to either side of each of them, from 0 to 10
 */
public record Reach(int harmonics, int sidebands) {
    public static final Reach USUAL = new Reach(4, 2);

    /** Throws {@link ImpossibleFactsException} with all that is out of reach. */
    public Reach {
        new Objections()
                .unless(
                        harmonics >= 1 && harmonics <= 20,
                        "%d harmonics are asked for. Ask for 1 to 20; the first is the plain order.",
                        harmonics)
                .unless(
                        sidebands >= 0 && sidebands <= 10,
                        "%d sidebands are asked for. Ask for 0 to 10 to either side.",
                        sidebands)
                .refuse();
    }
}
