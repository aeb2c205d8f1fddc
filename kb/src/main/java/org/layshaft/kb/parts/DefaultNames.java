package org.layshaft.kb.parts;

import java.util.List;
import java.util.Locale;

/** Makes plain trade names from ids: {@code cluster-third} is the cluster third gear, {@code 3-4} stays as it is. */
final class DefaultNames {
    private static final List<String> GEARS =
            List.of("gear", "idler", "pinion", "rim", "wheel", "ring", "annulus", "sun", "planet", "sprocket");
    private static final List<String> SHAFTS = List.of("shaft", "spindle", "quill", "axle", "tube");
    private static final List<String> BEARINGS = List.of("bearing", "bush", "needles", "rollers", "race");

    /** How long the words may be that a hyphen of a name like 5-R or hi-lo joins. */
    private static final int SHORT = 2;

    private DefaultNames() {}

    static String gear(String id) {
        return ending(words(id), GEARS);
    }

    static String shaft(String id) {
        return ending(words(id), SHAFTS);
    }

    static String bearing(String id) {
        return ending(words(id), BEARINGS);
    }

    /** The words of an id; the hyphen stays between two words of one or two letters. */
    static String words(String id) {
        String[] pieces = id.split("-");
        StringBuilder words = new StringBuilder(pieces.length == 0 ? id : pieces[0]);
        for (int piece = 1; piece < pieces.length; piece++) {
            boolean keep = pieces[piece - 1].length() <= SHORT && pieces[piece].length() <= SHORT;
            words.append(keep ? '-' : ' ').append(pieces[piece]);
        }
        return words.toString();
    }

    /** The words of the beginning of an id, ready for what comes after it; empty for none. */
    static String before(String prefix) {
        return prefix.isEmpty() ? "" : words(prefix) + " ";
    }

    private static String ending(String words, List<String> endings) {
        String lower = words.toLowerCase(Locale.ROOT);
        boolean ends = endings.stream().anyMatch(lower::endsWith);
        return ends ? words : words + " " + endings.get(0);
    }
}
