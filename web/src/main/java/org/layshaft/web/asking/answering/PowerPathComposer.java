package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** The way of the power, body by body. */
final class PowerPathComposer {
    private final Facts facts;

    PowerPathComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.PowerPath question) {
        GearVerdict gear = facts.gear(question.gear());
        String name = Names.gearName(gear.gear());
        List<String> says = new ArrayList<>();
        if (gear.path().isEmpty()) {
            says.addAll(new Standing(facts).of(List.of(gear)));
            Standing.because(gear.because()).limit(2).forEach(says::add);
            says.add("When all is sound the power in %s goes: %s."
                    .formatted(name, way(facts.soundGear(gear.gear()).path())));
        } else {
            says.add("In %s the power goes: %s.".formatted(name, way(gear.path())));
            says.add("The output turns %s for each turn of the input, %s."
                    .formatted(
                            Saying.number(gear.ratio().inverse()),
                            gear.direction().word()));
        }
        List<PathStep> steps =
                gear.path().isEmpty() ? facts.soundGear(gear.gear()).path() : gear.path();
        return Composed.of(says)
                .in(gear)
                .aboutParts(steps.stream().map(PathStep::part).toList());
    }

    private String way(List<PathStep> path) {
        return path.stream().map(step -> facts.names().of(step.part())).collect(Collectors.joining(" → "));
    }
}
