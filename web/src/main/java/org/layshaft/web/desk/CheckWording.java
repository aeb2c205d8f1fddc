package org.layshaft.web.desk;

import java.util.stream.Collectors;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Meeting;
import org.layshaft.engine.fit.Missing;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.engine.words.Names;

/** What one fit check says, in words. */
public final class CheckWording {
    private CheckWording() {}

    public static String of(Outcome outcome) {
        return switch (outcome) {
            case HOLDS -> "holds";
            case FAILS -> "fails";
            case UNTOLD -> "cannot be told";
        };
    }

    /** Where it looks: {@code third gear with cluster third gear}. */
    public static String where(Meeting meeting, Fitted fitted) {
        String one = fitted.nameOf(meeting.one());
        return meeting.one().equals(meeting.other()) ? one : one + " with " + fitted.nameOf(meeting.other());
    }

    /** What a figure is: {@code the third gear SM-1203: 2.5 mm, measured}. */
    public static String of(Figure figure) {
        return "%s: %s%s".formatted(figure.of(), figure.shown(), figure.measured() ? ", measured" : "");
    }

    /** By how much it fails: {@code misses by 0.25 mm}; empty where that is no number. */
    public static String missed(Judgement judgement) {
        return judgement.missedBy().map(by -> "misses by " + by.shown()).orElse("");
    }

    /** The whole, as a sentence: {@code Normal module: …; must be the same; misses by 0.25 mm.} */
    public static String says(Judgement judgement) {
        String title = judgement.check().title();
        if (judgement.isUntold()) {
            return "%s: %s."
                    .formatted(
                            title,
                            Names.joined(judgement.missing().stream()
                                    .map(Missing::words)
                                    .toList()));
        }
        String figures = judgement.figures().stream().map(CheckWording::of).collect(Collectors.joining("; "));
        String missed = missed(judgement);
        return "%s: %s; %s (%s)%s.%s"
                .formatted(
                        title,
                        figures,
                        judgement.limit().words(),
                        judgement.limit().source(),
                        missed.isEmpty() ? "" : "; " + missed,
                        judgement.remark().isEmpty() ? "" : " " + judgement.remark());
    }
}
