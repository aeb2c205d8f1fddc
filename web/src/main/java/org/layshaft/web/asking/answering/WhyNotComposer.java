package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** How one gear stands, and the reasons; each possibility with its own, where there are several. */
final class WhyNotComposer {
    private final Facts facts;

    WhyNotComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.WhyNot question) {
        GearVerdict gear = facts.gear(question.gear());
        List<String> says = new ArrayList<>();
        if (gear.verdict() == Verdict.WORKS && facts.isSound()) {
            says.add("%s works: nothing is said to be wrong.".formatted(Saying.sentence(Names.gearName(gear.gear()))));
        } else {
            says.addAll(new Standing(facts).of(List.of(gear)));
        }
        if (gear.verdict() != Verdict.UNCERTAIN) {
            says.addAll(new Because(facts).of(gear.possibilities().get(0)));
            says.addAll(new Noticing(facts).in(List.of(gear), false));
        } else {
            gear.possibilities().forEach(possibility -> says.add(supposing(possibility)));
        }
        return Composed.of(says).in(gear);
    }

    private String supposing(Possibility possibility) {
        String becomes = switch (possibility.verdict()) {
            case WORKS -> "it works";
            case WORKS_WITH_NOTICE -> "it works, with something noticed";
            case UNCERTAIN -> "it is in doubt";
            case LOST -> "it is lost";
            case LOCKS -> "it locks the box";
        };
        boolean noticed = possibility.verdict() == Verdict.WORKS_WITH_NOTICE;
        List<String> because = noticed
                ? possibility.notices().stream()
                        .map(notice -> Standing.sentence(notice.says()))
                        .toList()
                : new Because(facts).of(possibility);
        return "If %s, %s. %s"
                .formatted(possibility.says(), becomes, String.join(" ", because))
                .strip();
    }
}
