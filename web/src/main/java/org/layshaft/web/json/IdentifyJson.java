package org.layshaft.web.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.layshaft.engine.identify.Candidate;
import org.layshaft.engine.identify.Identification;
import org.layshaft.engine.identify.Residual;
import org.layshaft.engine.spline.Spline;
import org.layshaft.engine.spline.SplineEntry;
import org.layshaft.web.desk.BenchAnswer;
import org.layshaft.web.desk.BenchWording;

/**
 * What something at the bench may be.
 *
 * @param says what comes of the measurements on the gear; empty where there are none
 * @param candidates that agree, best first; where none does, the nearest
 * @param splines by their dimensions
 * @param entry whether the shaft enters the hub; null unless both are given
 */
public record IdentifyJson(
        List<String> says, List<CandidateJson> candidates, List<SplineJson> splines, EntryJson entry) {
    private static final int DECIMALS = 6;

    /**
     * A standard gear that the measured one may be.
     *
     * @param rank the same for those that nothing tells apart
     * @param misfit the squares of the residuals in allowances, with something for what is out of the ordinary
     */
    public record CandidateJson(
            int rank,
            boolean consistent,
            String words,
            int teeth,
            BigDecimal moduleMm,
            BigDecimal pressureAngleDeg,
            BigDecimal helixDeg,
            BigDecimal shift,
            BigDecimal misfit,
            List<ResidualJson> residuals,
            List<String> remarks) {
        static CandidateJson of(Candidate candidate) {
            return new CandidateJson(
                    candidate.rank(),
                    candidate.isConsistent(),
                    candidate.words(),
                    candidate.gear().teeth(),
                    rounded(candidate.gear().moduleMm()),
                    rounded(candidate.gear().pressureAngleDeg()),
                    rounded(candidate.gear().helixDeg()),
                    rounded(candidate.gear().shift()),
                    rounded(candidate.misfit()),
                    candidate.residuals().stream().map(ResidualJson::of).toList(),
                    candidate.remarks());
        }
    }

    /** @param computed null where it cannot be measured on the candidate */
    public record ResidualJson(
            String what,
            String unit,
            BigDecimal measured,
            BigDecimal computed,
            BigDecimal allowance,
            boolean withinAllowance) {
        static ResidualJson of(Residual residual) {
            return new ResidualJson(
                    residual.measurement().what(),
                    residual.measurement().unit(),
                    rounded(residual.measurement().measured()),
                    Double.isNaN(residual.computed()) ? null : rounded(residual.computed()),
                    rounded(residual.measurement().allowance()),
                    residual.isWithinAllowance());
        }
    }

    /** @param toothOrSpaceMm along the pitch circle: a shaft's tooth, a hub's space */
    public record SplineJson(
            String designation,
            String standard,
            String member,
            int teeth,
            BigDecimal moduleMm,
            BigDecimal pressureAngleDeg,
            BigDecimal majorMm,
            BigDecimal minorMm,
            BigDecimal pitchMm,
            BigDecimal baseMm,
            BigDecimal toothOrSpaceMm) {
        static SplineJson of(Spline spline) {
            return new SplineJson(
                    spline.designation(),
                    spline.standard(),
                    spline.member().word(),
                    spline.teeth(),
                    rounded(spline.moduleMm()),
                    rounded(spline.pressureAngleDeg()),
                    rounded(spline.majorMm()),
                    rounded(spline.minorMm()),
                    rounded(spline.pitchMm()),
                    rounded(spline.baseMm()),
                    rounded(spline.toothOrSpaceMm()));
        }
    }

    /** @param verdict {@code enters}, {@code does-not} or {@code cannot-be-told} */
    public record EntryJson(String verdict, String says, List<ComparedJson> compared) {
        static EntryJson of(SplineEntry entry) {
            return new EntryJson(
                    Spelling.of(entry.verdict()),
                    BenchWording.of(entry),
                    entry.comparisons().stream()
                            .map(each -> new ComparedJson(
                                    each.what(), each.ofShaft(), each.ofHub(), Spelling.of(each.outcome()), each.why()))
                            .toList());
        }
    }

    public record ComparedJson(String what, String ofShaft, String ofHub, String outcome, String why) {}

    public static IdentifyJson of(BenchAnswer answer) {
        return new IdentifyJson(
                answer.gear().map(BenchWording::says).orElse(List.of()),
                answer.gear().flatMap(gear -> gear.value()).map(Identification::candidates).orElse(List.of()).stream()
                        .map(CandidateJson::of)
                        .toList(),
                answer.splines().stream().map(SplineJson::of).toList(),
                answer.entry().map(EntryJson::of).orElse(null));
    }

    private static BigDecimal rounded(double number) {
        return BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
