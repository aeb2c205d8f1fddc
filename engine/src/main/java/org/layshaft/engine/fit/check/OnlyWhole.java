package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/** A part of a set that is only to be had whole comes with the rest of it. */
public final class OnlyWhole implements FitCheck {
    @Override
    public String id() {
        return "only-whole";
    }

    @Override
    public String title() {
        return "Unit of exchange";
    }

    @Override
    public MeetingKind meeting() {
        return MeetingKind.TOGETHER;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Fitted now = judging.now();
        CataloguePart part = now.putIn().get(judging.meeting().one());
        List<PartSet> sets = part == null ? List.of() : now.onlyIn(part);
        if (sets.isEmpty()) {
            return Optional.empty();
        }
        Optional<PartSet> whole =
                sets.stream().filter(set -> missing(set, now).isEmpty()).findFirst();
        PartSet shown = whole.orElse(sets.get(0));
        String then = whole.isPresent() ? "all of it" : "not " + String.join(", ", missing(shown, now));
        return judging.holds(
                whole.isPresent(),
                List.of(Figure.of("set " + shown.number(), "only whole"), Figure.of("of it is put in", then)),
                new Limit(
                        "must come with the rest of the set",
                        "the catalogue: %s"
                                .formatted(sets.stream().map(PartSet::number).collect(Collectors.joining(" or ")))));
    }

    private static List<String> missing(PartSet set, Fitted now) {
        return set.parts().values().stream()
                .filter(number -> now.putIn().values().stream()
                        .noneMatch(put -> put.number().equals(number)))
                .toList();
    }
}
