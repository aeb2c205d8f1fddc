package org.layshaft.kb.reading;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;

/** Whether the pattern of a question is written as patterns are: brackets closed and not nested, slots that there are. */
final class PatternNotation {
    private static final List<String> SLOTS = List.of("{gear}", "{part}", "{faults}");
    private static final List<String> SLOTS_OF_PARTS = List.of(
            "{set}", "{box}", "{place}", "{from}", "{to}", "{gear}", "{other}", "{rpm}", "{kmh}", "{mph}", "{ratio}",
            "{teeth}", "{tip}", "{helix}");

    /** What is asked of parts, and has slots of its own. */
    private static final Set<String> OF_PARTS = Set.of(
            "fits", "fits-here", "supplied", "other-tyres", "put-in", "nearer", "axle-for", "speed-gear", "measured");

    private static final List<String> SLOTS_AT_LARGE = List.of(
            "{gear}",
            "{part}",
            "{box}",
            "{term}",
            "{side}",
            "{rpm}",
            "{speed}",
            "{hz}",
            "{teeth}",
            "{torque}",
            "{axle}",
            "{tyre}",
            "{ratio}");

    /** What is asked of the box at large, of the road and of words; every piece not in round brackets has to be there. */
    private static final Set<String> AT_LARGE = Set.of(
            "road",
            "torque",
            "compare",
            "frequency",
            "mesh-frequency",
            "differential",
            "towed",
            "define",
            "explain",
            "which-gear",
            "what-for",
            "teeth",
            "declined",
            "group");

    private static final String NO_SIGNS = "[^()\\[\\]{}]*";
    private static final String SLOT = "\\{[^()\\[\\]{}]*\\}";

    /** A slot by itself or in brackets, or words in brackets; each begins after a blank or another piece. */
    private static final Pattern PIECE = Pattern.compile(
            "(?<=^|[ )\\]])(?:\\((?:%2$s|%1$s)\\)|\\[(?:%2$s|%1$s)\\]|%2$s(?= |$))".formatted(NO_SIGNS, SLOT));

    private static final Pattern SLOT_ANYWHERE = Pattern.compile(SLOT);
    private static final Pattern SIGN = Pattern.compile("[()\\[\\]{}]");
    private static final Pattern SOMETHING = Pattern.compile("[\\p{L}\\p{N}]");

    private PatternNotation() {}

    /** @param intent what is asked by the pattern */
    static void check(Item pattern, String intent, Report report) {
        List<String> known =
                OF_PARTS.contains(intent) ? SLOTS_OF_PARTS : AT_LARGE.contains(intent) ? SLOTS_AT_LARGE : SLOTS;
        String written = pattern.text().orElse("a");
        Matcher slots = SLOT_ANYWHERE.matcher(written);
        while (slots.find()) {
            if (known.stream().noneMatch(slots.group()::equalsIgnoreCase)) {
                report.broken(
                        pattern.pointer(),
                        "There is no slot '%s' for a pattern.".formatted(slots.group()),
                        written,
                        Nearest.advice(slots.group(), known));
            }
        }
        if (SIGN.matcher(PIECE.matcher(written).replaceAll("")).find()) {
            report.broken(
                    pattern.pointer(),
                    "The brackets of the pattern do not fit together.",
                    written,
                    "Close each, put none inside another, leave a blank before each, and let a slot stand alone.");
        }
        if (!SOMETHING.matcher(written).find()) {
            report.broken(pattern.pointer(), "The pattern has no words.", written, "Write at least one.");
        }
    }
}
