package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.Held;
import org.layshaft.kb.catalogue.FactName;

/** What form of teeth a check is for. Both sides are asked, so that one that is not told is missed. */
final class Forms {
    private static final String BEVEL = "bevel";
    private static final String INTERNAL = "internal";

    private Forms() {}

    static boolean anyBevel(Held one, Held other) {
        return isBevel(one) | isBevel(other);
    }

    static boolean bothBevel(Held one, Held other) {
        return isBevel(one) & isBevel(other);
    }

    static boolean anyInternal(Held one, Held other) {
        return isInternal(one) | isInternal(other);
    }

    static boolean isInternal(Held gear) {
        return gear.word(FactName.FORM).equals(INTERNAL);
    }

    private static boolean isBevel(Held gear) {
        return gear.word(FactName.FORM).equals(BEVEL);
    }
}
