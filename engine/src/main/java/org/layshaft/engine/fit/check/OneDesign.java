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

/** A part of a set that is of one design serves only beside the rest of it, which may stand there already. */
public final class OneDesign implements FitCheck {
    @Override
    public String id() {
        return "one-design";
    }

    @Override
    public String title() {
        return "One design";
    }

    @Override
    public MeetingKind meeting() {
        return MeetingKind.TOGETHER;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Fitted now = judging.now();
        CataloguePart part = now.putIn().get(judging.meeting().one());
        List<PartSet> sets = part == null ? List.of() : now.designs(part);
        if (sets.isEmpty()) {
            return Optional.empty();
        }
        Optional<PartSet> whole =
                sets.stream().filter(set -> missing(set, now).isEmpty()).findFirst();
        PartSet shown = whole.orElse(sets.get(0));
        String then = whole.isPresent() ? "all of it" : "not " + String.join(", ", missing(shown, now));
        return judging.holds(
                whole.isPresent(),
                List.of(
                        Figure.of("set " + shown.number(), "of one design"),
                        Figure.of("of it stands there then", then)),
                new Limit(
                        "must stand beside the rest of the set",
                        "the catalogue: %s"
                                .formatted(sets.stream().map(PartSet::number).collect(Collectors.joining(" or ")))));
    }

    private static List<String> missing(PartSet set, Fitted now) {
        return set.parts().values().stream()
                .filter(number -> !now.holds(number))
                .toList();
    }
}
