package org.layshaft.engine.suspects;

import java.util.List;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.symptom.World;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.words.Words;

/** Observations in words: {@code pulling in 3rd: it growls}, {@code in neutral, pedal down: no sign that it growls}. */
final class ObservationWords {
    private final Names names;
    private final Words words;

    ObservationWords(Names names, Words words) {
        this.names = names;
        this.words = words;
    }

    String say(Observation observation) {
        String says = says(observation.notice());
        String heat =
                observation.heat().map(warm -> ", %s".formatted(warm.word())).orElse("");
        return "%s%s: %s".formatted(when(observation), heat, observation.seen() ? says : "no sign that " + says);
    }

    /** What is claimed of a notice: {@code it growls}. */
    String says(String notice) {
        return words.notices().get(notice).says();
    }

    /** When: {@code pulling in 2nd and 3rd}, {@code in neutral, pedal up}. */
    String when(Situation situation, List<String> gears) {
        return names.when(situation.word(), situation.isInGear() ? String.join("+", gears) : World.NEUTRAL);
    }

    private String when(Observation observation) {
        List<String> gears = observation.gears();
        if (observation.situation().isEmpty()) {
            return gears.isEmpty() ? "at some time" : "in %s".formatted(names.gear(String.join("+", gears)));
        }
        Situation situation = observation.situation().get();
        if (!situation.isInGear() || !gears.isEmpty()) {
            return when(situation, gears);
        }
        String name = words.conditions().get(situation.word()).name();
        String some = observation.seen() ? "some gear" : "any gear";
        return name.contains("the gear") ? name.replace("the gear", some) : "%s in %s".formatted(name, some);
    }
}
