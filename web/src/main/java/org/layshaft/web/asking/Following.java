package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.understanding.Mentioned;

/** The question before with what the new words mention in its place: "and in fourth?". */
final class Following {
    private final KnowledgeBase knowledge;
    private final Question before;
    private final Mentioned now;

    Following(KnowledgeBase knowledge, Question before, Mentioned now) {
        this.knowledge = knowledge;
        this.before = before;
        this.now = now;
    }

    /** Empty where the question before has no place for it. */
    Optional<Question> question() {
        String layout = before.layout();
        List<Fault> faults = before.faults();
        Optional<String> gear = now.gears().stream().findFirst();
        Optional<String> part = now.parts().stream().findFirst();
        if (before instanceof Question.RatioOf && gear.isPresent()) {
            return Optional.of(new Question.RatioOf(layout, faults, now.gears()));
        } else if (before instanceof Question.PowerPath && gear.isPresent()) {
            return Optional.of(new Question.PowerPath(layout, faults, gear.get()));
        } else if (before instanceof Question.WhyNot && gear.isPresent()) {
            return Optional.of(new Question.WhyNot(layout, faults, gear.get()));
        } else if (before instanceof Question.TwoAtOnce && now.gears().size() == 2) {
            return Optional.of(new Question.TwoAtOnce(layout, faults, now.gears()));
        } else if (before instanceof Question.WhatTurns turns
                && (gear.isPresent() || now.neutral() || part.isPresent())) {
            return Optional.of(new Question.WhatTurns(
                    layout,
                    faults,
                    now.neutral() ? Optional.empty() : gear.or(turns::gear),
                    part.isPresent() ? now.parts() : turns.parts()));
        } else if (before instanceof Question.WhichWay way && (gear.isPresent() || now.neutral() || part.isPresent())) {
            return Optional.of(new Question.WhichWay(
                    layout, faults, part.orElse(way.part()), now.neutral() ? Optional.empty() : gear.or(way::gear)));
        } else if (before instanceof Question.GearsLeft && gear.isPresent() && faults.isEmpty()) {
            return Optional.of(new Question.GearsLeft(layout, faults, now.gears()));
        }
        return atLarge();
    }

    private Optional<Question> atLarge() {
        String layout = before.layout();
        Given given = now.given();
        boolean more = !now.gears().isEmpty() || !given.isNothing();
        if (before instanceof Question.OnTheRoad road && more) {
            return Optional.of(new Question.OnTheRoad(
                    layout, road.wanted(), or(now.gears(), road.gears()), given.over(road.given())));
        } else if (before instanceof Question.TorqueAt torque
                && (more || !now.parts().isEmpty())) {
            return Optional.of(new Question.TorqueAt(
                    layout,
                    or(now.gears(), torque.gears()),
                    now.parts().stream().findFirst().or(torque::part),
                    given.over(torque.given())));
        } else if (before instanceof Question.Sounding sounding && (more || now.neutral())) {
            Optional<String> gear = now.gears().stream().findFirst();
            return Optional.of(new Question.Sounding(
                    layout,
                    now.neutral() ? Optional.empty() : gear.or(sounding::gear),
                    now.neutral(),
                    given.over(sounding.given())));
        } else if (before instanceof Question.MeshFrequency mesh && !given.isNothing()) {
            return Optional.of(new Question.MeshFrequency(layout, given.over(mesh.given())));
        } else if (before instanceof Question.Compared compared
                && (more || !now.layouts().isEmpty())) {
            String other = now.layouts().stream()
                    .filter(each -> !each.equals(layout))
                    .findFirst()
                    .orElse(compared.other());
            return Optional.of(new Question.Compared(layout, other, or(now.gears(), compared.gears())));
        } else if (before instanceof Question.Meaning && !now.terms().isEmpty()) {
            return Optional.of(new Question.Meaning(layout, now.terms()));
        } else if (before instanceof Question.TeethOf && !now.parts().isEmpty()) {
            return Optional.of(new Question.TeethOf(layout, now.parts()));
        } else if (before instanceof Question.WhatFor && now.parts().size() == 1) {
            return Optional.of(new Question.WhatFor(layout, now.parts().get(0)));
        }
        return Optional.empty();
    }

    private static List<String> or(List<String> some, List<String> others) {
        return some.isEmpty() ? others : some;
    }

    /** Words for the failures of the question before, of what is mentioned now: {@code 1-2 fork bent}. */
    List<String> failuresInWords() {
        Layout layout = knowledge.layout(before.layout()).orElseThrow();
        Names names = new Names(layout, knowledge.words());
        List<String> words = new ArrayList<>();
        for (Fault fault : before.faults()) {
            now.parts().forEach(part -> words.add(names.of(part) + " " + fault.mode()));
            String kind = layout.parts().get(fault.part()).kind().word().replace('-', ' ');
            now.gears().forEach(gear -> words.add(Names.gearName(gear) + " " + kind + " " + fault.mode()));
        }
        return words;
    }

    /** What "it" stands for. */
    Optional<String> it() {
        Layout layout = knowledge.layout(before.layout()).orElseThrow();
        Names names = new Names(layout, knowledge.words());
        Optional<String> part = before.faults().stream().findFirst().map(Fault::part);
        if (before instanceof Question.WhichWay way) {
            part = Optional.of(way.part());
        } else if (before instanceof Question.WhatFor what) {
            part = Optional.of(what.part());
        } else if (before instanceof Question.WhatTurns turns && !turns.parts().isEmpty()) {
            part = Optional.of(turns.parts().get(0));
        } else if (before instanceof Question.Meaning meaning) {
            return Optional.of(meaning.terms().get(0));
        }
        return part.map(names::of);
    }

    /** The same kind of question about other failures. */
    static Question with(Question before, Question about) {
        return before instanceof Question.GearsLeft left && about instanceof Question.WhatHappens
                ? new Question.GearsLeft(about.layout(), about.faults(), left.gears())
                : about;
    }

    /** A question about the sound box that follows one about failures is about those too. */
    static Question supposing(Question question, List<Fault> faults) {
        if (!question.faults().isEmpty() || faults.isEmpty()) {
            return question;
        }
        if (question instanceof Question.GearsLeft left) {
            return new Question.GearsLeft(left.layout(), faults, left.gears());
        } else if (question instanceof Question.WhyNot why) {
            return new Question.WhyNot(why.layout(), faults, why.gear());
        } else if (question instanceof Question.WhyNone none) {
            return new Question.WhyNone(none.layout(), faults);
        } else if (question instanceof Question.TwoAtOnce two) {
            return new Question.TwoAtOnce(two.layout(), faults, two.gears());
        }
        return question;
    }
}
