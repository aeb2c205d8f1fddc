package org.layshaft.kb.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.failure.EffectKind;
import org.layshaft.kb.failure.EffectKind.Argument;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Seat;

/** Whether a failure mode asks of a fault what it then uses, and uses only what it asks. */
final class ModeChecks {
    private static final Set<String> SIDES = Set.of("front", "rear");
    private static final Set<String> POSITIONS = Set.of("front", "neutral", "rear");
    private static final Set<String> ENDS = Set.of("first", "last");
    private static final String OPPOSITE = "opposite ";

    private final FailureMode mode;
    private final Report report;

    private ModeChecks(FailureMode mode, Report report) {
        this.mode = mode;
        this.report = report;
    }

    static void check(FailureMode mode, Item item, Report report) {
        ModeChecks checks = new ModeChecks(mode, report);
        item.get("does").items().forEach(checks::effect);
        item.get("noticed").items().forEach(checks::noticed);
        if (mode.seat().isPresent() && mode.befalls() != PartKind.GEAR) {
            report.broken(
                    item.get("seat").pointer(),
                    "Only a gear has a seat; this failure befalls a %s."
                            .formatted(mode.befalls().word()),
                    item.get("seat").text().orElse(""),
                    "Leave 'seat' out.");
        }
    }

    private void effect(Item item) {
        Arrays.stream(EffectKind.values())
                .filter(kind -> item.get(kind.word()).isPresent())
                .forEach(kind -> {
                    kind(item.get(kind.word()), kind);
                    argument(item.get(kind.word()), kind.argument());
                });
        condition(item.get("if"));
    }

    private void kind(Item item, EffectKind kind) {
        if (!kind.canComeOf(mode.befalls())) {
            List<String> kinds = Arrays.stream(PartKind.values())
                    .filter(kind::canComeOf)
                    .map(PartKind::word)
                    .toList();
            report.broken(
                    item.pointer(),
                    "'%s' cannot come of a failure of the kind of part '%s'."
                            .formatted(kind.word(), mode.befalls().word()),
                    kind.word(),
                    "It can come of: %s.".formatted(String.join(", ", kinds)));
        }
        if (kind == EffectKind.SEIZED_TO_ITS_SHAFT
                && mode.befalls() == PartKind.GEAR
                && mode.seat().filter(Seat.FREE::equals).isEmpty()) {
            report.broken(
                    item.pointer(),
                    "Only a free gear can seize to its shaft.",
                    kind.word(),
                    "Add \"seat\": \"free\" to the failure.");
        }
    }

    private void noticed(Item item) {
        OccasionChecks.check(mode.befalls(), item, report);
        argument(item.get("side"), Argument.SIDE);
        condition(item.get("if"));
    }

    /** A {@code $what} must be asked, and every value it may have must serve. */
    private void argument(Item item, Argument argument) {
        String written = item.text().orElse("");
        boolean opposite = written.startsWith(OPPOSITE);
        String plain = opposite ? written.substring(OPPOSITE.length()) : written;
        if (!plain.startsWith("$")) {
            return;
        }
        String what = plain.substring(1);
        List<String> values = mode.unlessTold().get(what);
        if (values == null) {
            report.broken(
                    item.pointer(),
                    "'%s' uses '%s', which is not asked of the fault.".formatted(written, what),
                    written,
                    "Add it to 'unless_told', with every value it may have. "
                            + Nearest.advice(what, mode.unlessTold().keySet()));
            return;
        }
        Set<String> serve = opposite ? SIDES : serving(argument);
        values.stream()
                .filter(value -> !serve.contains(value))
                .findFirst()
                .ifPresent(value -> report.broken(
                        item.pointer(),
                        "'%s' may be '%s', which cannot serve here.".formatted(what, value),
                        written,
                        "Here it can be: %s."
                                .formatted(String.join(
                                        ", ", serve.stream().sorted().toList()))));
    }

    private static Set<String> serving(Argument argument) {
        return switch (argument) {
            case SIDE -> SIDES;
            case POSITION -> POSITIONS;
            case PLACE -> Set.of(FailureMode.ANY_PLACE);
            case END -> ENDS;
            case NONE -> Set.of();
        };
    }

    private void condition(Item conditions) {
        conditions.entries().forEach((what, item) -> {
            List<String> values = mode.unlessTold().getOrDefault(what, List.of());
            String value = item.text().orElse("");
            if (!values.contains(value) && !value.isEmpty()) {
                report.broken(
                        item.pointer(),
                        "The condition %s=%s can never hold: the fault is not asked that.".formatted(what, value),
                        value,
                        Nearest.advice(what + "=" + value, asked()));
            }
        });
    }

    private List<String> asked() {
        return mode.unlessTold().entrySet().stream()
                .flatMap(ModeChecks::written)
                .toList();
    }

    private static Stream<String> written(Map.Entry<String, List<String>> asked) {
        return asked.getValue().stream().map(value -> asked.getKey() + "=" + value);
    }
}
