package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** Which pairs of gears can be engaged at once, what each pair does, and what keeps the others apart. */
final class TwoAtOnceComposer {
    private final Facts facts;

    TwoAtOnceComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.TwoAtOnce question) {
        question.gears().forEach(facts::gear);
        List<Conflict> pairs = facts.whatIf().conflicts().stream()
                .filter(pair -> pair.gears().containsAll(question.gears()))
                .toList();
        List<String> says = new ArrayList<>();
        if (question.gears().size() == 2 && pairs.isEmpty()) {
            says.add(onOneRail(question.gears()));
        }
        List<Conflict> meeting = pairs.stream().filter(Conflict::canMeet).toList();
        if (meeting.isEmpty() && question.gears().size() < 2) {
            says.add("No two gears can be engaged at once.");
        }
        grouped(meeting)
                .forEach((what, gears) -> says.add("Can be engaged at once, and %s: %s.".formatted(what, gears)));
        grouped(pairs.stream().filter(pair -> !pair.canMeet()).toList())
                .forEach((what, gears) ->
                        says.add("Cannot be engaged at once (together %s): %s.".formatted(what, gears)));
        if (question.gears().size() == 2) {
            pairs.stream()
                    .flatMap(pair -> pair.because().stream())
                    .map(reason -> Standing.sentence(reason.says()))
                    .distinct()
                    .limit(3)
                    .forEach(says::add);
        }
        return Composed.of(says).about(question.gears()).aboutPairs(pairs);
    }

    private String onOneRail(List<String> gears) {
        Box.DerivedGear one = facts.soundGear(gears.get(0));
        Box.DerivedGear other = facts.soundGear(gears.get(1));
        return one.name().equals(other.name())
                ? "That is one gear, not two."
                : "%s cannot be engaged at once: %s moves to one side or the other, never both."
                        .formatted(
                                Saying.sentence(Saying.gears(gears)),
                                facts.names().the(between(one, other)));
    }

    /** The rail that has a place for each of them, or else what engages the first. */
    private static String between(Box.DerivedGear one, Box.DerivedGear other) {
        return one.pushes().stream()
                .filter(push -> other.pushes().stream()
                        .anyMatch(their -> their.rail().equals(push.rail()) && their.side() != push.side()))
                .map(Box.Push::rail)
                .findFirst()
                .orElseGet(() -> one.first().map(Box.Push::member).orElse(""));
    }

    /** Pairs by what they do together and what keeps them apart. */
    private Map<String, String> grouped(List<Conflict> pairs) {
        Map<String, String> grouped = new LinkedHashMap<>();
        for (Conflict pair : pairs) {
            String prevented = pair.preventedBy().isEmpty()
                    ? ""
                    : "; prevented by " + facts.names().list(pair.preventedBy());
            grouped.merge(does(pair.outcome()) + prevented, Saying.gears(pair.gears()), (so, more) -> so + "; " + more);
        }
        return grouped;
    }

    private static String does(Motion.Outcome outcome) {
        return switch (outcome) {
            case LOCKED -> "they lock the box";
            case DRIVES -> "they still drive";
            case NEUTRAL -> "they do nothing";
            case INPUT_HELD -> "they hold the input";
            case OUTPUT_HELD -> "they hold the output";
        };
    }
}
