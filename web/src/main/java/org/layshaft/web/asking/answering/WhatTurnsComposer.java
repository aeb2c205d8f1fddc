package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** What turns, what stands, what is free, and what turns on its own shaft. */
final class WhatTurnsComposer {
    private final Facts facts;

    WhatTurnsComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.WhatTurns question) {
        Optional<GearVerdict> gear = question.gear().map(facts::gear);
        Motion motion =
                gear.map(GearVerdict::motion).orElse(facts.whatIf().neutral().motion());
        Turning turning = new Turning(facts, motion);
        List<String> says = new ArrayList<>();
        Stances.supposed(facts, gear).ifPresent(says::add);
        String when = Stances.when(gear);
        if (question.parts().isEmpty()) {
            says.addAll(everything(turning, when));
        } else {
            question.parts().forEach(part -> says.add(PartTurning.said(facts, turning, part, when)));
        }
        Composed composed = Composed.of(says);
        composed = gear.isPresent()
                ? composed.in(gear.get())
                : composed.in(facts.whatIf().neutral());
        return composed.aboutParts(question.parts());
    }

    private List<String> everything(Turning turning, String when) {
        List<String> says = new ArrayList<>();
        List<String> turningOnes = turningBodies(turning);
        says.add("%s with the engine running and the pedal up, %s, each shaft with what is fixed on it."
                .formatted(when, turningOnes.isEmpty() ? "nothing turns" : verb(turningOnes, "turns", "turn")));
        add(says, having(turning, speed -> speed.filter(Fraction::isZero).isPresent()), "stands still", "stand still");
        add(says, having(turning, Optional::isEmpty), "is free to turn", "are free to turn");
        List<String> slipping = turning.onTheirShafts();
        if (!slipping.isEmpty()) {
            says.add("Relative to what they sit on, in turns for each turn of the engine: %s."
                    .formatted(String.join("; ", slipping)));
        }
        return says;
    }

    private void add(List<String> says, List<String> bodies, String one, String several) {
        if (!bodies.isEmpty()) {
            says.add(Saying.sentence(verb(bodies, one, several)) + ".");
        }
    }

    private String verb(List<String> bodies, String one, String several) {
        return facts.names().list(bodies) + " " + (bodies.size() == 1 ? one : several);
    }

    private static List<String> turningBodies(Turning turning) {
        return having(turning, speed -> speed.filter(each -> !each.isZero()).isPresent());
    }

    private static List<String> having(Turning turning, Predicate<Optional<Fraction>> test) {
        return turning.bodies().stream()
                .filter(body -> test.test(turning.speed(body)))
                .toList();
    }
}
