package org.layshaft.web.cli;

import java.util.List;
import java.util.function.Function;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspect;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.desk.Diagnosis;
import org.layshaft.web.desk.Wording;

/** What may be wrong as plain text: the outcome, the first suspects, what to try next. */
final class SuspectsText {
    private static final int TOLD = 10;
    private static final int MOST_SIGNS = 3;
    private static final int TESTS = 5;
    private static final int OUTCOMES = 5;

    private final TextPage page = new TextPage();
    private final Diagnosis diagnosis;
    private final Function<Observation, String> words;

    private SuspectsText(Diagnosis diagnosis, Function<Observation, String> words) {
        this.diagnosis = diagnosis;
        this.words = words;
    }

    /** @param words an observation in words */
    static String of(Diagnosis diagnosis, Function<Observation, String> words) {
        return new SuspectsText(diagnosis, words).write();
    }

    private String write() {
        page.list(
                "%s, as understood:".formatted(diagnosis.layout().name()),
                diagnosis.understood().stream().map(Diagnosis.Understood::says).toList());
        if (diagnosis.evidence().afterWork()) {
            page.paragraph("It began after earlier work.");
        }
        page.paragraph(diagnosis.suspects().why());
        suspects(diagnosis.suspects().singles());
        if (!diagnosis.suspects().pairs().isEmpty()) {
            page.paragraph("Two at once:");
            suspects(diagnosis.suspects().pairs());
        }
        if (!diagnosis.suspects().tests().isEmpty()) {
            page.paragraph("What to try next, that which tells most for its trouble first:");
            diagnosis.suspects().tests().stream().limit(TESTS).forEach(this::test);
        }
        return page.toString();
    }

    private void suspects(List<Suspect> suspects) {
        suspects.stream().limit(TOLD).forEach(suspect -> suspect(suspect, suspects));
        if (suspects.size() > TOLD) {
            page.paragraph("%d more; --json lists them all.".formatted(suspects.size() - TOLD));
        }
    }

    private void suspect(Suspect suspect, List<Suspect> among) {
        page.paragraph("%s. %s. It is %s, %s."
                .formatted(
                        Diagnosis.rank(suspect, among),
                        Saying.sentence(suspect.says()),
                        Wording.of(suspect.common()),
                        Wording.of(suspect.seenAt())));
        listed(
                "explains",
                suspect.explains().stream()
                        .map(each -> "%s (%s)".formatted(words.apply(each.observation()), Wording.of(each.degree())))
                        .toList());
        listed("leaves unexplained", suspect.unexplained().stream().map(words).toList());
        listed(
                "would show what was not there",
                suspect.wrong().stream().map(words).toList());
        listed(
                "would also show",
                suspect.predicts().stream()
                        .limit(MOST_SIGNS)
                        .map(Suspect.Sign::says)
                        .toList());
        listed("why it stands here", suspect.reasons());
        listed("to confirm", suspect.confirm());
    }

    private void listed(String what, List<String> items) {
        if (!items.isEmpty()) {
            page.item("   ", what + ": ", String.join("; ", items));
        }
    }

    private void test(NextTest test) {
        page.item("  ", "- ", "%s (%s)".formatted(Saying.sentence(test.says()), Wording.of(test.effort())));
        for (NextTest.Outcome outcome : test.outcomes().stream().limit(OUTCOMES).toList()) {
            String left = outcome.leaves().size() == 1
                    ? "one suspect is left"
                    : "%d suspects are left".formatted(outcome.leaves().size());
            String add = outcome.evidence().isEmpty()
                    ? ""
                    : ". Add \"%s\""
                            .formatted(String.join(
                                    "; ",
                                    outcome.evidence().stream()
                                            .map(Observation::written)
                                            .toList()));
            page.item("    ", "* ", "%s: %s%s".formatted(outcome.says(), left, add));
        }
        if (test.outcomes().size() > OUTCOMES) {
            page.item(
                    "    ",
                    "* ",
                    "%d more, less likely".formatted(test.outcomes().size() - OUTCOMES));
        }
    }
}
