package org.layshaft.kb.reading;

import java.util.Arrays;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.PartKind;

/** Whether what a line asks of the motion can be asked of its kind of part, and can ever hold where the line says. */
final class OccasionChecks {
    private OccasionChecks() {}

    static void check(PartKind kind, Item line, Report report) {
        Arrays.stream(NoticeWhen.values())
                .filter(when -> isWritten(line.get("when"), when.word()))
                .forEach(when -> {
                    kind(kind, when, line.get("when"), report);
                    line.get("in").oneOrMore().forEach(in -> situation(when, in, report));
                });
    }

    private static void kind(PartKind kind, NoticeWhen when, Item item, Report report) {
        if (!when.canBeAskedOf(kind)) {
            report.broken(
                    item.pointer(),
                    "'%s' cannot be asked of the kind of part '%s'.".formatted(when.word(), kind.word()),
                    when.word(),
                    "Of this kind can be asked: %s."
                            .formatted(words(NoticeWhen.values(), each -> each.canBeAskedOf(kind), NoticeWhen::word)));
        }
    }

    private static void situation(NoticeWhen when, Item in, Report report) {
        Arrays.stream(Situation.values())
                .filter(situation -> isWritten(in, situation.word()))
                .filter(situation -> !when.canHoldIn(situation))
                .forEach(situation -> report.broken(
                        in.pointer(),
                        "'%s' never holds in the situation '%s'.".formatted(when.word(), situation.word()),
                        situation.word(),
                        "It can hold in: %s.".formatted(words(Situation.values(), when::canHoldIn, Situation::word))));
    }

    private static boolean isWritten(Item item, String word) {
        return item.text().filter(word::equals).isPresent();
    }

    private static <E> String words(E[] all, Predicate<E> some, Function<E, String> word) {
        return Arrays.stream(all).filter(some).map(word).collect(Collectors.joining(", "));
    }
}
