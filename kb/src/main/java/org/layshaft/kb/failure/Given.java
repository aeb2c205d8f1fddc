package org.layshaft.kb.failure;

import java.util.Map;

/**
 * A value that is fixed, or taken from what is told of the fault.
 *
 * <p>Written {@code front}, {@code $side} or {@code opposite $side}.
 */
public sealed interface Given {

    /** The value, with what is told of the fault filled in. */
    String in(Map<String, String> told);

    record Fixed(String value) implements Given {
        @Override
        public String in(Map<String, String> told) {
            return value;
        }
    }

    record Told(String what) implements Given {
        @Override
        public String in(Map<String, String> told) {
            return told.get(what);
        }
    }

    record OppositeOfTold(String what) implements Given {
        @Override
        public String in(Map<String, String> told) {
            return told.get(what).equals("front") ? "rear" : "front";
        }
    }

    static Given parse(String written) {
        if (written.startsWith("opposite $")) {
            return new OppositeOfTold(written.substring("opposite $".length()));
        }
        return written.startsWith("$") ? new Told(written.substring(1)) : new Fixed(written);
    }
}
