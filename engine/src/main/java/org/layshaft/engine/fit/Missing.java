package org.layshaft.engine.fit;

import org.layshaft.kb.catalogue.FactName;

/**
 * A fact that nobody has told, or a part that no check looks at.
 *
 * @param what is missing
 * @param at what it would be a fact of, in words: {@code the third gear SM-1203}
 * @param name the fact; null where it is not a fact that is missing
 */
public record Missing(What what, String at, FactName name) {
    /** Sorts of what can be missing. */
    public enum What {
        FACT,
        /** It is not known which part stands there. */
        PART,
        /** No check looks at such a part, so nothing is known for or against it. */
        CHECK
    }

    static Missing fact(String at, FactName name) {
        return new Missing(What.FACT, at, name);
    }

    static Missing part(String at) {
        return new Missing(What.PART, at, null);
    }

    static Missing check(String at) {
        return new Missing(What.CHECK, at, null);
    }

    /** A clause: {@code the helix angle of the third gear SM-1203 is missing}. */
    public String words() {
        return switch (what) {
            case FACT -> "the %s of %s is missing".formatted(name.spoken(), at);
            case PART -> "which part stands at %s is missing".formatted(at);
            case CHECK -> "no check looks at %s".formatted(at);
        };
    }
}
