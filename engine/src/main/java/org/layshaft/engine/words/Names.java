package org.layshaft.engine.words;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.words.Term;
import org.layshaft.kb.words.Words;

/** What parts, gears, notices and conditions are called in sentences about one layout. */
public final class Names {
    private static final Pattern NAMED_BY_RANK =
            Pattern.compile("(first|second|third|fourth|fifth|sixth|seventh|eighth|top|reverse|[0-9]).* gear");
    private static final Map<String, String> ENDINGS = Map.of("1", "st", "2", "nd", "3", "rd");

    private final Layout layout;
    private final Words words;

    public Names(Layout layout, Words words) {
        this.layout = layout;
        this.words = words;
    }

    /** A body or part without article: {@code 3-4 fork}, {@code front piece of the countershaft}. */
    public String of(String body) {
        String shaft = ShaftPiece.shaftOf(body);
        return ShaftPiece.prefixOf(body)
                + Optional.ofNullable(layout.parts().get(shaft))
                        .map(Part::name)
                        .orElseGet(() -> shaft.replace('-', ' '));
    }

    /** A body or part with the article it takes: {@code the 3-4 fork}, {@code third gear}. */
    public String the(String body) {
        String name = of(body);
        return name.startsWith("the ") || NAMED_BY_RANK.matcher(name).matches() ? name : "the " + name;
    }

    /** Several with article: {@code the a, the b and the c}. */
    public String list(Collection<String> bodies) {
        return joined(bodies.stream().map(this::the).toList());
    }

    /** A gear by its derived name, or two at once: {@code 3rd}, {@code reverse}, {@code 3rd low}, {@code 1st and 3rd}, {@code
     * neutral}. */
    public static String gearName(String at) {
        return joined(List.of(at.split("\\+")).stream().map(Names::oneGear).toList());
    }

    /** As {@link #gearName}, for use on an instance. */
    public String gear(String at) {
        return gearName(at);
    }

    /** {@code with 3rd selected}, {@code in neutral}. */
    public String withSelected(String at) {
        return at.equals("neutral") ? "in neutral" : "with %s selected".formatted(gear(at));
    }

    /** {@code in neutral}, {@code to the front}; null stands for neutral. */
    public String place(Side side) {
        return side == null ? "in neutral" : "to the %s".formatted(side.word());
    }

    /** How fast and which way, against the input: {@code 24/47 turns the other way for each turn of the input}. */
    public String turns(Fraction speed) {
        return "%s %s %s for each turn of the input"
                .formatted(
                        speed.absolute(),
                        speed.absolute().equals(Fraction.ONE) ? "turn" : "turns",
                        speed.signum() < 0 ? "the other way" : "the same way");
    }

    public String notice(String id) {
        return name(words.notices(), id);
    }

    /** When, of one gear or of neutral: {@code pulling in 3rd}, {@code in neutral, pedal up}. */
    public String situation(Situation situation, String at) {
        return condition(situation.word(), at, gear(at));
    }

    /** A situation by itself: {@code pulling}. */
    public String condition(Situation situation) {
        return name(words.conditions(), situation.word());
    }

    /** How warm everything is: {@code with all cold}. */
    public String heat(Heat heat) {
        return name(words.conditions(), heat.word());
    }

    /** What is noticed and when: {@code pulling in 3rd and 4th: it jumps out of gear}. */
    public String noticed(String notice, String condition, String at) {
        return noticed(notice, condition, Optional.empty(), at);
    }

    /** The same only cold, or only hot: {@code pulling in 3rd, with all hot: it jumps out of gear}. */
    public String noticed(String notice, String condition, Optional<Heat> heat, String at) {
        return "%s%s: %s".formatted(condition(condition, at, gear(at)), only(heat), says(notice));
    }

    /** The clause that claims what is noticed: {@code it jumps out of gear}. */
    public String says(String notice) {
        return Optional.ofNullable(words.notices().get(notice)).map(Term::says).orElseGet(() -> notice(notice));
    }

    /** The clause that only allows it: {@code it may jump out of gear}. */
    public String may(String notice) {
        return Optional.ofNullable(words.notices().get(notice)).map(Term::may).orElseGet(() -> notice(notice));
    }

    /** The same where it only may be noticed: {@code pulling in 3rd or 4th: it may jump out of gear}. */
    public String perhapsNoticed(String notice, String condition, String at) {
        return perhapsNoticed(notice, condition, Optional.empty(), at);
    }

    /** The same only cold, or only hot: {@code pulling in 3rd or 4th, with all hot: it may jump out of gear}. */
    public String perhapsNoticed(String notice, String condition, Optional<Heat> heat, String at) {
        return "%s%s: %s"
                .formatted(condition(condition, at, gear(at).replace(" and ", " or ")), only(heat), may(notice));
    }

    private String only(Optional<Heat> heat) {
        return heat.map(each -> ", " + heat(each)).orElse("");
    }

    /** When something is noticed: {@code pulling in 3rd and 4th}, {@code shifting into 3rd}, {@code in neutral, pedal up}. */
    public String when(String condition, String at) {
        return condition(condition, at, gear(at));
    }

    private String condition(String id, String at, String gears) {
        String condition = name(words.conditions(), id);
        boolean ofGears = condition.contains("the gear");
        if (at.equals("neutral")) {
            return ofGears ? "in neutral" : condition;
        }
        return ofGears ? condition.replace("the gear", gears) : "%s in %s".formatted(condition, gears);
    }

    /** {@code a, b and c}. */
    public static String joined(List<String> items) {
        int last = items.size() - 1;
        return last <= 0
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }

    private static String name(Map<String, Term> terms, String id) {
        return Optional.ofNullable(terms.get(id)).map(Term::name).orElseGet(() -> id.replace('-', ' '));
    }

    private static String oneGear(String at) {
        if (at.equals("neutral")) {
            return at;
        }
        int end = at.indexOf(' ');
        String number = end < 0 ? at : at.substring(0, end);
        return numbered(number) + at.substring(number.length());
    }

    /** {@code 3rd}, {@code reverse}; a name that has no number stays as it is. */
    private static String numbered(String name) {
        if (name.matches("R[0-9]*")) {
            return name.length() == 1 ? "reverse" : "reverse " + name.substring(1);
        }
        if (!name.matches("[0-9]+")) {
            return name;
        }
        String last = name.substring(name.length() - 1);
        return name + (name.matches(".*1[1-3]") ? "th" : ENDINGS.getOrDefault(last, "th"));
    }
}
