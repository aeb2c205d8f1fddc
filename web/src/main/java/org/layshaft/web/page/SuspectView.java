package org.layshaft.web.page;

import java.util.List;
import java.util.function.Function;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspect;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.desk.Diagnosis;
import org.layshaft.web.desk.Wording;

/**
 * A suspect: what speaks for it and against it, and what to do about it.
 *
 * @param rank {@code 1}, or {@code 1=} where it is tied
 * @param mark full where it explains everything and contradicts nothing, half where not
 * @param href to the box with it supposed
 * @param more how many signs besides those listed it would show
 */
record SuspectView(
        String rank,
        String says,
        MarkView mark,
        String fit,
        String href,
        List<String> explains,
        List<String> unexplained,
        List<String> wrong,
        List<String> predicts,
        int more,
        String common,
        String basis,
        String seenAt,
        List<String> confirm,
        List<String> cautions,
        List<String> leadsTo,
        List<String> reasons,
        String account) {
    private static final int MOST_SIGNS = 6;

    static List<SuspectView> all(List<Suspect> suspects, Diagnosis diagnosis, Function<Observation, String> words) {
        return suspects.stream()
                .map(suspect -> of(suspect, suspects, diagnosis, words))
                .toList();
    }

    private static SuspectView of(
            Suspect suspect, List<Suspect> among, Diagnosis diagnosis, Function<Observation, String> words) {
        DiagnosisAddress back = DiagnosisAddress.of(diagnosis.layout().id(), diagnosis.evidence());
        return new SuspectView(
                Diagnosis.rank(suspect, among),
                Saying.sentence(suspect.says()),
                MarkView.ofCertainty(suspect.fits()),
                suspect.fits() ? "explains everything" : "explains a part",
                Address.of(diagnosis.layout().id())
                        .besides(suspect.faults())
                        .withSeen(back.seen())
                        .link(),
                suspect.explains().stream()
                        .map(each -> "%s (%s)".formatted(words.apply(each.observation()), Wording.of(each.degree())))
                        .toList(),
                suspect.unexplained().stream().map(words).toList(),
                suspect.wrong().stream().map(words).toList(),
                suspect.predicts().stream()
                        .limit(MOST_SIGNS)
                        .map(Suspect.Sign::says)
                        .toList(),
                Math.max(0, suspect.predicts().size() - MOST_SIGNS),
                Wording.of(suspect.common()),
                String.join("; ", suspect.basis()),
                Wording.of(suspect.seenAt()),
                suspect.confirm(),
                suspect.cautions(),
                suspect.leadsTo(),
                suspect.reasons(),
                suspect.account());
    }

    public boolean hasUnexplained() {
        return !unexplained.isEmpty();
    }

    public boolean hasWrong() {
        return !wrong.isEmpty();
    }

    public boolean hasPredicts() {
        return !predicts.isEmpty();
    }

    public boolean hasMore() {
        return more > 0;
    }

    public boolean hasReasons() {
        return !reasons.isEmpty();
    }

    public boolean hasCautions() {
        return !cautions.isEmpty();
    }

    public boolean hasLeadsTo() {
        return !leadsTo.isEmpty();
    }
}
