package org.layshaft.engine.sound;

import org.layshaft.engine.exact.Fraction;

/** Numbers of things in words. */
final class Counted {
    private Counted() {}

    /** Without a sign: {@code 24/47 turns}, {@code 1 turn}. */
    static String turns(Fraction turns) {
        Fraction size = turns.absolute();
        return size + (size.equals(Fraction.ONE) ? " turn" : " turns");
    }
}
