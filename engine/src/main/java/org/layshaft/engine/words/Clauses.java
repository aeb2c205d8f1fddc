package org.layshaft.engine.words;

import java.util.List;
import java.util.regex.Pattern;

/** Makes sentences of clauses. */
final class Clauses {
    private static final Pattern SPEED =
            Pattern.compile("[,:] [0-9/]+ turns? the (same|other) way for each turn of the input");
    private static final Pattern TWO_SPEEDS =
            Pattern.compile("both -?[0-9/]+ and -?[0-9/]+ times for each turn of the (input|output)");
    /** More ways than this are counted, not told. */
    private static final int MOST_WAYS = 3;

    private Clauses() {}

    static String sentence(String clause) {
        return Character.toUpperCase(clause.charAt(0)) + clause.substring(1) + ".";
    }

    /** {@code The sleeve does not reach, so 3rd is lost.} */
    static String so(List<String> premises, String conclusion) {
        return sentence(
                premises.isEmpty()
                        ? "so " + conclusion
                        : both(premises) + ", so " + conclusion.replace(", so ", ", and "));
    }

    /** {@code Pulling in 3rd, the gear and its shaft turn unlike, so it growls.} */
    static String noticed(List<String> premises, String conclusion) {
        String[] parts = conclusion.split(": ", 2);
        List<String> then = premises.stream()
                .map(premise -> premise.endsWith(" " + parts[0])
                        ? premise.substring(0, premise.length() - parts[0].length() - 1)
                        : premise)
                .toList();
        return then.isEmpty()
                ? sentence("so %s, %s".formatted(parts[0], parts[1]))
                : sentence("%s, %s, so %s".formatted(parts[0], both(then), parts[1]));
    }

    /** {@code If the fork is bent slightly, or if it is bent badly, it is lost.} */
    static String choice(List<String> conditions, String outcome) {
        String told = String.join(", or ", conditions.subList(0, Math.min(MOST_WAYS, conditions.size())));
        int others = conditions.size() - MOST_WAYS;
        String rest = others <= 0 ? "" : ", or in %d other %s".formatted(others, others == 1 ? "way" : "ways");
        return sentence("%s%s, it %s".formatted(told, rest, outcome));
    }

    /** {@code the one, and the other}. */
    static String both(List<String> clauses) {
        return String.join(", and ", clauses);
    }

    /** Nobody listens to fractions. */
    static String withoutNumbers(String clause) {
        String still = SPEED.matcher(clause).replaceAll("");
        return TWO_SPEEDS.matcher(still).replaceAll("at two speeds at once");
    }
}
