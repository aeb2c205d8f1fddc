package org.layshaft.engine.whatif;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.failure.EffectKind;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;

/**
 * A pack of failures that no workshop has seen: each kind of part with each change that can come of it, noticed on every
 * occasion; and each kind with no change at all, noticed on every occasion in every situation that can be.
 */
final class EveryFailure {
    private static final String NAME = "tried-";

    private EveryFailure() {}

    /** The packs on the class path, and this one, written to the folder. */
    static KnowledgeBase readIn(Path folder) {
        try {
            Files.createDirectories(folder.resolve("words"));
            Files.createDirectories(folder.resolve("failure-modes"));
            Files.writeString(folder.resolve("pack.json"), """
                    {"format": "layshaft/pack/1", "id": "every-failure", "version": "1", "title": "Every failure"}""");
            Files.writeString(folder.resolve("words/words.json"), words());
            for (PartKind kind : PartKind.values()) {
                Files.writeString(folder.resolve("failure-modes/" + kind.word() + ".json"), """
                        { "format": "layshaft/failure-modes/1", "%s": {
                        %s } }""".formatted(
                                kind.word(), modesOf(kind)));
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        List<PackSource> sources = new ArrayList<>(PackSource.onClassPath());
        sources.add(PackSource.folder(folder));
        Reading reading = PackReader.read(sources);
        if (!reading.findings().isEmpty()) {
            throw new IllegalStateException(reading.findings().toString());
        }
        return reading.knowledge();
    }

    /** Whether a failure is one of these, by the name of its mode. */
    static boolean is(String mode) {
        return mode.startsWith(NAME);
    }

    private static String words() {
        return Stream.of(NoticeWhen.values())
                .map(when -> """
                        "%s": { "means": "It is noticed.", "says": "it is noticed", "may": "it may be noticed" }""".formatted(notice(when)))
                .collect(Collectors.joining(",\n", "{ \"format\": \"layshaft/words/1\", \"notices\": {\n", "}}"));
    }

    private static String modesOf(PartKind kind) {
        Stream<String> changing = Stream.of(EffectKind.values())
                .filter(effect -> effect.canComeOf(kind))
                .map(effect ->
                        mode(effect.word(), asked(effect), does(effect), seat(effect, kind), lines(kind, false)));
        return Stream.concat(changing, Stream.of(mode("nothing", "", "", "", lines(kind, true))))
                .collect(Collectors.joining(",\n"));
    }

    private static String mode(String name, String asked, String does, String seat, String lines) {
        return """
                "%s%s": { %s "unless_told": { %s }, "does": [%s], "noticed": [%s],
                  "common": "rare", "basis": "None.", "confirm": "Look." }""".formatted(NAME, name, seat, asked, does, lines);
    }

    private static String seat(EffectKind effect, PartKind kind) {
        return effect == EffectKind.SEIZED_TO_ITS_SHAFT && kind == PartKind.GEAR ? "\"seat\": \"free\"," : "";
    }

    private static String asked(EffectKind effect) {
        return switch (effect.argument()) {
            case NONE -> "";
            case SIDE -> "\"side\": [\"front\", \"rear\"]";
            case POSITION -> "\"at\": [\"front\", \"neutral\", \"rear\"]";
            case PLACE -> "\"place\": [\"any place\"]";
            case END -> "\"end\": [\"first\", \"last\"]";
        };
    }

    private static String does(EffectKind effect) {
        String argument = switch (effect.argument()) {
            case NONE -> "true";
            case SIDE -> "\"$side\"";
            case POSITION -> "\"$at\"";
            case PLACE -> "\"$place\"";
            case END -> "\"$end\"";
        };
        return "{ \"%s\": %s }".formatted(effect.word(), argument);
    }

    /** A line for every occasion that can be asked of this kind: in its own situations, or wherever it can hold. */
    private static String lines(PartKind kind, boolean everywhere) {
        return Stream.of(NoticeWhen.values())
                .filter(when -> when.canBeAskedOf(kind))
                .map(when -> line(when, everywhere ? situations(when) : ""))
                .collect(Collectors.joining(",\n"));
    }

    private static String situations(NoticeWhen when) {
        return Stream.of(Situation.values())
                .filter(when::canHoldIn)
                .map(situation -> "\"" + situation.word() + "\"")
                .collect(Collectors.joining(", ", ", \"in\": [", "]"));
    }

    private static String line(NoticeWhen when, String in) {
        return """
                { "notice": "%s", "when": "%s"%s%s }""".formatted(notice(when), when.word(), in, degree(when));
    }

    /** Some only perhaps, some only cold or hot. */
    private static String degree(NoticeWhen when) {
        return switch (when.ordinal() % 4) {
            case 1 -> ", \"may\": true";
            case 2 -> ", \"heat\": \"cold\"";
            case 3 -> ", \"heat\": \"hot\", \"may\": true";
            default -> "";
        };
    }

    private static String notice(NoticeWhen when) {
        return "n-" + when.word();
    }
}
