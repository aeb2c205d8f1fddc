package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.Saying;

/** Gears and parts that are mentioned and that the box does not have. */
final class Absence {
    private static final int MOST_NAMED = 4;

    private Absence() {}

    /** The first such thing that is asked about. */
    static Optional<String> in(Heard heard, FaultsHeard faults) {
        return heard.mentions().stream()
                .filter(mention -> !faults.used().contains(mention.from()))
                .filter(mention -> mention.one(Meaning.NoSuchGear.class).isPresent()
                        || mention.one(Meaning.Elsewhere.class).isPresent())
                .map(mention -> says(heard.words(), mention))
                .findFirst();
    }

    /** That the box does not have what is mentioned, and what it has or which other has it. */
    static String says(BoxWords words, Mention mention) {
        String box = words.layout().name();
        Optional<Meaning.Elsewhere> there = mention.one(Meaning.Elsewhere.class);
        if (there.isEmpty()) {
            List<String> gears =
                    words.box().gears().stream().map(Box.DerivedGear::name).toList();
            return "%s has no %s. It has %s.".formatted(box, mention.typed(), Saying.gears(gears));
        }
        List<String> boxes = there.get().layouts().stream()
                .map(id -> words.knowledge().layouts().get(id))
                .map(Layout::name)
                .toList();
        return "%s has no %s; %s %s.".formatted(box, mention.typed(), few(boxes), boxes.size() == 1 ? "has" : "have");
    }

    /** The first of them by name, the rest by their number. */
    private static String few(List<String> boxes) {
        int more = boxes.size() - MOST_NAMED;
        return more <= 1
                ? Names.joined(boxes)
                : String.join(", ", boxes.subList(0, MOST_NAMED)) + " and %d others".formatted(more);
    }
}
