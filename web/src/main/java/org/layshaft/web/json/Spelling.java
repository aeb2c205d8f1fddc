package org.layshaft.web.json;

import java.util.Locale;

/** How names of ours are spelt in JSON. */
final class Spelling {
    private Spelling() {}

    /** {@code INPUT_HELD} as {@code input-held}. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@code GearsLeft} as {@code gears-left}. */
    static String of(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
