package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** The torque that the engine's comes to at the output, at the wheels or on one part of the path. */
final class TorqueComposer {
    private final Facts facts;
    private final Optional<Fraction> engineNm;

    TorqueComposer(Facts facts, Question.TorqueAt question) {
        this.facts = facts;
        this.engineNm = question.given().torqueNm();
    }

    Composed compose(Question.TorqueAt question) {
        List<String> says = new ArrayList<>();
        List<GearVerdict> gears = facts.gears(question.gears());
        for (GearVerdict gear : gears) {
            says.add(question.part()
                    .filter(part -> !facts.box().layout().outputs().contains(part))
                    .map(part -> at(part, gear))
                    .orElseGet(() -> atOutput(gear)));
        }
        if (toHalfShafts()) {
            says.add("The differential shares it equally: straight ahead each half-shaft gets half.");
        } else if (question.part().isEmpty()) {
            says.add(atWheels(gears));
        }
        says.add("Friction in meshes, bearings and oil is not taken off; the real figure is somewhat less.");
        if (engineNm.isEmpty()) {
            says.add("Give the engine's torque in the question to have it in N·m: \"… with 200 N·m\".");
        }
        Composed composed = Composed.of(says).about(question.gears());
        composed = gears.size() == 1 ? composed.in(gears.get(0)) : composed;
        return question.part().map(List::of).map(composed::aboutParts).orElse(composed);
    }

    private boolean toHalfShafts() {
        return facts.box().layout().outputs().stream()
                .allMatch(output ->
                        facts.box().layout().find(HalfShaft.class, output).isPresent());
    }

    private String atOutput(GearVerdict gear) {
        return "%s multiplies the engine's torque by %s%s%s."
                .formatted(
                        Saying.sentence(Names.gearName(gear.gear())),
                        Saying.number(gear.ratio()),
                        toHalfShafts() ? ", final drive included" : "",
                        newtonMetres(gear.ratio())
                                .map(torque -> ": %s %s".formatted(torque, where()))
                                .orElse(""));
    }

    private String where() {
        return toHalfShafts()
                ? "at both half-shafts together"
                : "at " + facts.names().list(facts.box().layout().outputs());
    }

    /** Where one path carries all, torque is that of the engine over the turns. */
    private String at(String part, GearVerdict gear) {
        String the = Saying.sentence(facts.names().the(part));
        String name = Names.gearName(gear.gear());
        Optional<PathStep> step =
                gear.path().stream().filter(each -> each.part().equals(part)).findFirst();
        if (!gear.motion().carrying().contains(part)) {
            return "In %s %s carries no power: no torque but that of drag."
                    .formatted(name, facts.names().the(part));
        } else if (step.isEmpty() || branches(gear)) {
            return "In %s %s carries a share of the power, with others beside it; how much cannot be told here."
                    .formatted(name, facts.names().the(part));
        }
        Fraction times = step.get().speed().absolute().inverse();
        return "%s carries %s times the engine's torque in %s%s."
                .formatted(
                        the,
                        Saying.number(times),
                        name,
                        newtonMetres(times).map(torque -> ": " + torque).orElse(""));
    }

    /** Whether shafts carry power that the path does not name: branches that share. */
    private boolean branches(GearVerdict gear) {
        List<String> path = gear.path().stream().map(PathStep::part).toList();
        return gear.motion().carrying().stream()
                .filter(part -> facts.box().layout().find(Shaft.class, part).isPresent())
                .anyMatch(part -> !path.contains(part));
    }

    private String atWheels(List<GearVerdict> gears) {
        Optional<Fraction> axle =
                facts.box().layout().road().flatMap(Road::axleRatio).map(Fraction::of);
        return axle.map(ratio ->
                        "The axle behind it multiplies that by %s again%s; an open differential shares it equally between the wheels."
                                .formatted(Saying.plain(ratio, 3), atWheels(gears, ratio)))
                .orElse("At the wheels it is that times the axle ratio, which is not stated here.");
    }

    private String atWheels(List<GearVerdict> gears, Fraction axle) {
        return gears.size() == 1
                ? newtonMetres(gears.get(0).ratio().times(axle))
                        .map(torque -> ", to %s at the driven wheels together".formatted(torque))
                        .orElse("")
                : "";
    }

    private Optional<String> newtonMetres(Fraction times) {
        return engineNm.map(torque -> "%s N·m".formatted(Saying.plain(torque.times(times), 1)));
    }
}
