package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspects;
import org.layshaft.web.asking.Saying;

/** What may be wrong: the outcome, the first suspects with their ties, and what to try next. */
final class SuspectsComposer {
    private static final int FIRST = 5;

    private SuspectsComposer() {}

    static Composed compose(Suspects suspects) {
        List<String> says = new ArrayList<>(List.of(suspects.why()));
        List<Suspect> first = suspects.singles().stream().limit(FIRST).toList();
        for (Suspect suspect : first) {
            String tied = suspects.singles().stream()
                                    .filter(other -> other.rank() == suspect.rank())
                                    .count()
                            > 1
                    ? "="
                    : "";
            says.add("%d%s. %s.".formatted(suspect.rank(), tied, Saying.sentence(suspect.says())));
        }
        int more = suspects.singles().size() - first.size();
        if (more > 0) {
            says.add("%d more are listed with what speaks for and against each.".formatted(more));
        }
        suspects.tests().stream()
                .limit(1)
                .forEach(test -> says.add("To try next: %s".formatted(Standing.sentence(test.says()))));
        return Composed.of(says)
                .aboutParts(first.stream()
                        .flatMap(suspect -> suspect.faults().stream())
                        .flatMap(fault -> Stream.of(fault.part()))
                        .distinct()
                        .toList());
    }
}
