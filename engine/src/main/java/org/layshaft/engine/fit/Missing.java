package org.layshaft.engine.fit;

import org.layshaft.kb.catalogue.FactName;

/**
 * A fact that nobody has told.
 *
 * @param at what it would be a fact of, in words: {@code the third gear SM-1203}
 * @param name null where not even the part is known
 */
public record Missing(String at, FactName name) {

    /** A clause: {@code the helix angle of the third gear SM-1203 is missing}. */
    public String words() {
        return name == null
                ? "which part stands at %s is missing".formatted(at)
                : "the %s of %s is missing".formatted(name.spoken(), at);
    }
}
