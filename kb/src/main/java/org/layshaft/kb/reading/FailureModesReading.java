package org.layshaft.kb.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.layshaft.kb.failure.Commonness;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.Effect;
import org.layshaft.kb.failure.EffectKind;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Given;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.json.Document;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Seat;

/** Reads files of failure modes. */
public final class FailureModesReading {
    private FailureModesReading() {}

    public static List<Located<FailureMode>> of(Document document, Report report) {
        List<Located<FailureMode>> modes = new ArrayList<>();
        for (PartKind kind : PartKind.values()) {
            document.item().get(kind.word()).entries().forEach((name, item) -> {
                FailureMode mode = mode(kind, name, item);
                ModeChecks.check(mode, item, report);
                modes.add(new Located<>(mode, document.file(), item.pointer(), report));
            });
        }
        return modes;
    }

    /** Every mention of a notice by its id. */
    public static List<Located<String>> notices(Document document, Report report) {
        return Arrays.stream(PartKind.values())
                .flatMap(kind -> document.item().get(kind.word()).entries().values().stream())
                .flatMap(mode -> mode.get("noticed").items().stream())
                .map(line -> line.get("notice"))
                .flatMap(item ->
                        item.text().stream().map(id -> new Located<>(id, document.file(), item.pointer(), report)))
                .toList();
    }

    private static FailureMode mode(PartKind kind, String name, Item item) {
        Map<String, List<String>> unlessTold = new LinkedHashMap<>();
        item.get("unless_told").entries().forEach((what, values) -> unlessTold.put(what, values.texts()));
        return new FailureMode(
                kind,
                name,
                item.get("also").texts(),
                word(item.get("seat"), Seat.values(), FailureModesReading::word),
                unlessTold,
                item.get("does").items().stream()
                        .flatMap(effect -> effect(effect).stream())
                        .toList(),
                item.get("noticed").items().stream()
                        .flatMap(line -> noticed(line).stream())
                        .toList(),
                word(item.get("common"), Commonness.values(), FailureModesReading::word)
                        .orElse(Commonness.OCCASIONAL),
                item.get("basis").text().orElse(""),
                item.get("confirm").text().orElse(""),
                word(item.get("seen_at"), Depth.values(), Depth::word).orElse(Depth.STRIPPED),
                item.get("follows_work").truth().orElse(false),
                item.get("cautions").texts(),
                item.get("leads_to").texts(),
                item.get("normal").truth().orElse(false));
    }

    private static Optional<Effect> effect(Item item) {
        return Arrays.stream(EffectKind.values())
                .filter(kind -> item.get(kind.word()).isPresent())
                .findFirst()
                .map(kind -> new Effect(kind, item.get(kind.word()).text().map(Given::parse), onlyIf(item)));
    }

    private static Optional<NoticeLine> noticed(Item item) {
        Optional<Given> side = item.get("side").text().map(Given::parse);
        return item.get("notice")
                .text()
                .flatMap(notice -> word(item.get("when"), NoticeWhen.values(), NoticeWhen::word)
                        .map(when -> new NoticeLine(
                                notice,
                                when,
                                situations(item.get("in"), when),
                                word(item.get("heat"), Heat.values(), Heat::word),
                                item.get("may").truth().orElse(false),
                                side,
                                onlyIf(item))));
    }

    private static Set<Situation> situations(Item in, NoticeWhen when) {
        return in.isPresent()
                ? in.oneOrMore().stream()
                        .flatMap(item -> word(item, Situation.values(), Situation::word).stream())
                        .collect(Collectors.toSet())
                : when.unlessSaid();
    }

    private static Map<String, String> onlyIf(Item item) {
        Map<String, String> onlyIf = new LinkedHashMap<>();
        item.get("if").entries().forEach((what, value) -> value.text().ifPresent(text -> onlyIf.put(what, text)));
        return onlyIf;
    }

    private static <E extends Enum<E>> Optional<E> word(Item item, E[] values, Function<E, String> spelling) {
        return item.text()
                .flatMap(text -> Arrays.stream(values)
                        .filter(value -> spelling.apply(value).equals(text))
                        .findFirst());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
