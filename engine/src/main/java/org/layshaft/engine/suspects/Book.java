package org.layshaft.engine.suspects;

import java.util.BitSet;
import org.layshaft.engine.symptom.FaultDictionary;
import org.layshaft.engine.symptom.Signs;

/**
 * The dictionary of a layout.
 *
 * @param shown whatever some fault shows, or may show
 */
record Book(FaultDictionary dictionary, BitSet shown) {

    static Book of(FaultDictionary dictionary) {
        BitSet shown = new BitSet();
        for (FaultDictionary.Entry entry : dictionary.entries()) {
            add(entry.shown().cold(), shown);
            add(entry.shown().hot(), shown);
        }
        return new Book(dictionary, shown);
    }

    private static void add(Signs signs, BitSet to) {
        to.or(signs.certain());
        to.or(signs.perhaps());
    }
}
