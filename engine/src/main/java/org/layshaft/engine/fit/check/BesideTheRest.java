package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/** A part that was put in wants the rest of one of its sets. */
abstract class BesideTheRest extends Check {
    private final String kind;
    private final String of;
    private final String must;

    /**
     * @param kind what such a set is: {@code only whole}
     * @param of what is told of its parts: {@code of it is put in}
     * @param must what must be so, as a clause
     */
    BesideTheRest(String id, String title, String kind, String of, String must) {
        super(id, title, MeetingKind.TOGETHER);
        this.kind = kind;
        this.of = of;
        this.must = must;
    }

    /** The sets of which one must be complete; none where the part stands by itself. */
    abstract List<PartSet> sets(Fitted now, CataloguePart part);

    /** Whether a part of the set is there as it must be. */
    abstract boolean isThere(Fitted now, String number);

    @Override
    public final Optional<Judgement> judge(Judging judging) {
        Fitted now = judging.now();
        CataloguePart part = now.putIn().get(judging.meeting().one());
        List<PartSet> sets = part == null ? List.of() : sets(now, part);
        if (sets.isEmpty()) {
            return Optional.empty();
        }
        Optional<PartSet> whole =
                sets.stream().filter(set -> missing(set, now).isEmpty()).findFirst();
        PartSet shown = whole.orElse(sets.get(0));
        String then = whole.isPresent() ? "all of it" : "not " + String.join(", ", missing(shown, now));
        String listed = sets.stream().map(PartSet::number).collect(Collectors.joining(" or "));
        return judging.holds(
                whole.isPresent(),
                List.of(Figure.of("set " + shown.number(), kind), Figure.of(of, then)),
                new Limit(must, "the catalogue: " + listed));
    }

    private List<String> missing(PartSet set, Fitted now) {
        return set.parts().values().stream()
                .filter(number -> !isThere(now, number))
                .toList();
    }
}
