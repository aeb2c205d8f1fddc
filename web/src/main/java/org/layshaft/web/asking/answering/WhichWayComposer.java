package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.web.asking.Question;

/** Which way one part turns, against the engine, and how fast. */
final class WhichWayComposer {
    private final Facts facts;

    WhichWayComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.WhichWay question) {
        Optional<GearVerdict> gear = question.gear().map(facts::gear);
        Motion motion =
                gear.map(GearVerdict::motion).orElse(facts.whatIf().neutral().motion());
        String when = Stances.when(gear);
        List<String> says = new ArrayList<>();
        Stances.supposed(facts, gear).ifPresent(says::add);
        says.add(PartTurning.said(facts, new Turning(facts, motion), question.part(), when));
        Composed composed = Composed.of(says);
        return (gear.isPresent()
                        ? composed.in(gear.get())
                        : composed.in(facts.whatIf().neutral()))
                .aboutParts(List.of(question.part()));
    }
}
