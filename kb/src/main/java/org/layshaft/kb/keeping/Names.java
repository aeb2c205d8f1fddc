package org.layshaft.kb.keeping;

import java.util.Set;
import java.util.regex.Pattern;
import org.layshaft.kb.keeping.ShelfException.Kind;

/** Which names files of ours may have: the same on every system, and never one that leads elsewhere. */
final class Names {
    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]");

    /** A folder of these names makes what it stands in a pack. */
    private static final Set<String> IN_A_PACK =
            Set.of("layshaft-pack", "layouts", "catalogues", "failure-modes", "words", "phrases");

    private Names() {}

    static boolean isName(String name) {
        return ID.matcher(name).matches() && !DEVICE.matcher(name).matches() && !IN_A_PACK.contains(name);
    }

    static String require(String what, String name) {
        if (!ID.matcher(name).matches()) {
            throw refused(
                    "\"%s\" cannot be the id of a %s. Write small letters, digits and hyphens, at most 60, the first no hyphen."
                            .formatted(shown(name), what));
        }
        if (DEVICE.matcher(name).matches()) {
            throw refused(
                    "\"%s\" is the name of a device on some systems. Give the %s another id.".formatted(name, what));
        }
        if (IN_A_PACK.contains(name)) {
            throw refused(
                    "\"%s\" is what a folder inside a pack is called. Give the %s another id.".formatted(name, what));
        }
        return name;
    }

    private static String shown(String name) {
        String line = name.replaceAll("\\p{Cntrl}", "\uFFFD");
        return line.length() <= 80 ? line : line.substring(0, 79) + "…";
    }

    private static ShelfException refused(String message) {
        return new ShelfException(Kind.NAME, message);
    }
}
