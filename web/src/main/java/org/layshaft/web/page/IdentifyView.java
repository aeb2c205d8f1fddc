package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.identify.Candidate;
import org.layshaft.engine.identify.Identification;
import org.layshaft.engine.spline.Spline;
import org.layshaft.engine.spline.SplineComparison;
import org.layshaft.engine.spline.SplineEntry;
import org.layshaft.web.desk.BenchAnswer;
import org.layshaft.web.desk.BenchRequest;
import org.layshaft.web.desk.BenchWording;

/**
 * The page of the bench.
 *
 * @param answered whether anything was measured that could be used
 * @param says what comes of the measurements
 * @param entry whether the shaft enters the hub; null unless both are given
 */
record IdentifyView(
        FormView form,
        List<String> trouble,
        boolean answered,
        List<String> says,
        List<CandidateView> candidates,
        List<SplineView> splines,
        EntryView entry,
        String api) {
    private static final int MOST = 12;

    /** What was typed; empty for nothing. */
    record FormView(
            boolean internal,
            String teeth,
            String tip,
            String root,
            String span,
            String otherSpan,
            String pins,
            String helix,
            String centre,
            String spline,
            String hub) {
        static FormView of(BenchRequest request) {
            return new FormView(
                    request.form().filter("internal"::equalsIgnoreCase).isPresent(),
                    request.teeth().orElse(""),
                    request.tip().orElse(""),
                    request.root().orElse(""),
                    request.spans().stream().findFirst().orElse(""),
                    request.spans().stream().skip(1).findFirst().orElse(""),
                    request.pins().orElse(""),
                    request.helix().orElse(""),
                    request.centre().orElse(""),
                    request.spline().orElse(""),
                    request.hub().orElse(""));
        }
    }

    /** A standard gear that it may be. */
    record CandidateView(int rank, String words, List<String> residuals, List<String> remarks) {
        static CandidateView of(Candidate candidate) {
            return new CandidateView(
                    candidate.rank(),
                    candidate.words(),
                    candidate.residuals().stream().map(BenchWording::of).toList(),
                    candidate.remarks());
        }
    }

    /** A spline and its dimensions. */
    record SplineView(String designation, List<String> dimensions) {
        static SplineView of(Spline spline) {
            return new SplineView(spline.designation(), BenchWording.of(spline));
        }
    }

    /** Whether a shaft enters a hub. */
    record EntryView(String says, List<SplineComparison> compared) {
        static EntryView of(SplineEntry entry) {
            return new EntryView(BenchWording.of(entry), entry.comparisons());
        }
    }

    static IdentifyView of(BenchRequest request, List<String> trouble, Optional<BenchAnswer> answer, String api) {
        return new IdentifyView(
                FormView.of(request),
                trouble,
                answer.isPresent(),
                answer.flatMap(BenchAnswer::gear).map(BenchWording::says).orElse(List.of()),
                answer
                        .flatMap(BenchAnswer::gear)
                        .flatMap(gear -> gear.value())
                        .map(Identification::candidates)
                        .orElse(List.of())
                        .stream()
                        .limit(MOST)
                        .map(CandidateView::of)
                        .toList(),
                answer.map(BenchAnswer::splines).orElse(List.of()).stream()
                        .map(SplineView::of)
                        .toList(),
                answer.flatMap(BenchAnswer::entry).map(EntryView::of).orElse(null),
                api);
    }

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean hasSays() {
        return !says.isEmpty();
    }

    public boolean hasCandidates() {
        return !candidates.isEmpty();
    }
}
