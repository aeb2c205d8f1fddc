package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Verdict;
import org.layshaft.web.asking.Question;

/** Which gears still drive, which are in doubt, which are gone, and why the last are. */
final class GearsLeftComposer {
    private static final int MOST_REASONS = 3;

    private final Facts facts;

    GearsLeftComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.GearsLeft question) {
        Standing standing = new Standing(facts);
        List<GearVerdict> gears = facts.gears(question.gears());
        List<String> says = new ArrayList<>(standing.of(gears));
        if (question.gears().isEmpty()) {
            says.addAll(standing.ofNeutral());
        }
        List<GearVerdict> noticed = gears.stream()
                .filter(gear -> gear.verdict() == Verdict.WORKS_WITH_NOTICE)
                .toList();
        new Noticing(facts).in(noticed, false).stream().limit(MOST_REASONS).forEach(says::add);
        gears.stream()
                .filter(gear -> gear.verdict() == Verdict.LOST || gear.verdict() == Verdict.LOCKS)
                .flatMap(gear -> new Because(facts).of(gear.possibilities().get(0)).stream())
                .distinct()
                .limit(MOST_REASONS)
                .forEach(says::add);
        Composed composed = Composed.of(says).about(question.gears());
        return gears.size() == 1 ? composed.in(gears.get(0)) : composed;
    }
}
