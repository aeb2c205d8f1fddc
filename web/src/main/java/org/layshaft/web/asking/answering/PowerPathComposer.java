package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.HalfShaft;
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
            says.addAll(new Because(facts).of(gear.possibilities().get(0)));
            says.add("When all is sound the power in %s goes: %s."
                    .formatted(name, way(facts.soundGear(gear.gear()).path())));
        } else {
            says.add("In %s the power goes: %s.".formatted(name, way(gear.path())));
            says.add("The output makes %s for each turn of the input and takes the vehicle %s."
                    .formatted(
                            Saying.turns(gear.ratio().inverse()),
                            gear.direction() == Direction.FORWARD ? "forward" : "backward"));
        }
        return Composed.of(says).in(gear);
    }

    /** The bodies in order; the two half-shafts side by side. */
    private String way(List<PathStep> path) {
        StringBuilder way = new StringBuilder();
        boolean sideBySide = false;
        for (PathStep step : path) {
            boolean halfShaft =
                    facts.box().layout().find(HalfShaft.class, step.part()).isPresent();
            way.append(way.length() == 0 ? "" : halfShaft && sideBySide ? " and " : " → ");
            way.append(facts.names().of(step.part()));
            sideBySide = halfShaft;
        }
        return way.toString();
    }
}
