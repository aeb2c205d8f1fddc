package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.web.asking.FaultUnderstanding;

/** Understands words that stand for failures alone, written out in full or said as in a question. */
final class FaultListener {
    private static final int MOST_OFFERS = 5;

    private final BoxWords words;
    private final Listener listener;

    FaultListener(BoxWords words, Listener listener) {
        this.words = words;
        this.listener = listener;
    }

    FaultUnderstanding understand(String typed) {
        return new WrittenFaults(words).read(typed).orElseGet(() -> said(typed));
    }

    private FaultUnderstanding said(String typed) {
        Heard heard = listener.hear(typed);
        FaultsHeard faults = listener.faults(heard);
        if (faults.problem().isPresent()) {
            FaultsHeard.Problem problem = faults.problem().get();
            return new FaultUnderstanding.Problem(problem.says(), written(problem.offers()));
        }
        if (faults.each().isEmpty()) {
            return notUnderstood(heard, typed);
        }
        List<String> unknown = listener.unknownBeside(heard, faults);
        if (!unknown.isEmpty()) {
            return new FaultUnderstanding.Problem(
                    "I did not understand %s."
                            .formatted(Names.joined(unknown.stream()
                                    .map(word -> "'" + word + "'")
                                    .toList())),
                    faults.together().stream().map(this::together).toList());
        }
        List<List<Fault>> together = faults.together();
        return together.size() == 1
                ? new FaultUnderstanding.Faults(together.get(0))
                : new FaultUnderstanding.Problem(
                        "'%s' may be one of %d things; say which.".formatted(typed.strip(), together.size()),
                        together.stream().map(this::together).toList());
    }

    private FaultUnderstanding notUnderstood(Heard heard, String typed) {
        List<String> parts = heard.mentions().stream()
                .flatMap(mention -> mention.parts().stream())
                .distinct()
                .toList();
        List<Fault> ofParts = new ArrayList<>();
        parts.forEach(part -> words.modesFor(part).forEach(mode -> ofParts.add(Fault.of(part, mode.name()))));
        String says = "'%s' names no failure of %s; name a part and how it fails."
                .formatted(typed.strip(), words.layout().name());
        return new FaultUnderstanding.Problem(
                says,
                written(Stream.concat(ofParts.stream(), FaultProblems.all(words))
                        .toList()));
    }

    private String together(List<Fault> faults) {
        return String.join("; ", faults.stream().map(Fault::written).toList());
    }

    private static List<String> written(List<Fault> faults) {
        return faults.stream().map(Fault::written).distinct().limit(MOST_OFFERS).toList();
    }
}
