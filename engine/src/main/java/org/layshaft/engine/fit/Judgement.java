package org.layshaft.engine.fit;

import java.util.List;
import java.util.Optional;

/**
 * What one check says of one meeting.
 *
 * @param figures the numbers that it looked at, most often both
 * @param missing what could not be told; empty unless the outcome is {@link Outcome#UNTOLD}
 * @param missedBy by how much it fails, where that is a number
 * @param remark a sentence more; empty where there is nothing to add
 */
public record Judgement(
        FitCheck check,
        Meeting meeting,
        Outcome outcome,
        List<Figure> figures,
        Limit limit,
        List<Missing> missing,
        Optional<Figure> missedBy,
        String remark) {
    public Judgement {
        figures = List.copyOf(figures);
        missing = List.copyOf(missing);
    }

    public boolean fails() {
        return outcome == Outcome.FAILS;
    }

    public boolean isUntold() {
        return outcome == Outcome.UNTOLD;
    }

    public Judgement remarking(String sentence) {
        return new Judgement(check, meeting, outcome, figures, limit, missing, missedBy, sentence);
    }
}
