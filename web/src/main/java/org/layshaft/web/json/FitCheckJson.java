package org.layshaft.web.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Missing;
import org.layshaft.web.desk.CheckWording;

/**
 * What one check says of one meeting.
 *
 * @param check what it is known by: {@code normal-module}
 * @param meeting how the two places meet: {@code teeth}
 * @param places ids of the two places; the same twice where a place is judged by itself
 * @param outcome {@code holds}, {@code fails} or {@code untold}
 * @param limit what the figures are held to; null where it cannot be told
 * @param source where the limit comes from; null where it cannot be told
 * @param missedBy null unless it fails by a number
 * @param missing what is missing, in clauses
 */
public record FitCheckJson(
        String check,
        String title,
        String meeting,
        List<String> places,
        String outcome,
        List<FigureJson> figures,
        String limit,
        String source,
        FigureJson missedBy,
        List<String> missing,
        String remark,
        String says) {
    private static final int DECIMALS = 6;

    /**
     * @param value null where it is a word, or beyond all bounds
     * @param unit empty where it has none
     * @param measured otherwise it is stated, or reckoned from what is
     */
    public record FigureJson(String of, BigDecimal value, String shown, String unit, boolean measured) {
        static FigureJson of(Figure figure) {
            return new FigureJson(
                    figure.of(),
                    Double.isFinite(figure.number())
                            ? BigDecimal.valueOf(figure.number()).setScale(DECIMALS, RoundingMode.HALF_UP)
                            : null,
                    figure.shown(),
                    figure.unit().suffix().strip(),
                    figure.measured());
        }
    }

    static FitCheckJson of(Judgement judgement) {
        boolean untold = judgement.isUntold();
        return new FitCheckJson(
                judgement.check().id(),
                judgement.check().title(),
                judgement.meeting().kind().word(),
                List.of(judgement.meeting().one(), judgement.meeting().other()),
                Spelling.of(judgement.outcome()),
                judgement.figures().stream().map(FigureJson::of).toList(),
                untold ? null : judgement.limit().words(),
                untold ? null : judgement.limit().source(),
                judgement.missedBy().map(FigureJson::of).orElse(null),
                judgement.missing().stream().map(Missing::words).toList(),
                judgement.remark(),
                CheckWording.says(judgement));
    }
}
