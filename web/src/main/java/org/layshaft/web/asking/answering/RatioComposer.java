package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** Ratios, exactly and to three decimals, with what a failure or the printed data say against them. */
final class RatioComposer {
    private final Facts facts;

    RatioComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.RatioOf question) {
        List<String> says = new ArrayList<>();
        List<GearVerdict> gears = facts.gears(question.gears());
        gears.forEach(gear -> says.add(ratio(gear)));
        facts.box().differences().stream()
                .filter(difference ->
                        question.gears().isEmpty() || question.gears().contains(difference.gear()))
                .map(Box.Difference::says)
                .map(Standing::sentence)
                .forEach(says::add);
        Composed composed = Composed.of(says).about(question.gears());
        return gears.size() == 1 ? composed.in(gears.get(0)) : composed;
    }

    private String ratio(GearVerdict gear) {
        String name = Saying.sentence(Names.gearName(gear.gear()));
        String number = "%s is %s to 1".formatted(name, Saying.number(gear.ratio()));
        String way = gear.direction() == Direction.REVERSE ? ", backward" : "";
        return number + way + standing(gear.verdict()) + ".";
    }

    private static String standing(Verdict verdict) {
        return switch (verdict) {
            case WORKS, WORKS_WITH_NOTICE -> "";
            case UNCERTAIN -> " when it drives, which is in doubt here";
            case LOST -> " when all is sound; here it does not drive";
            case LOCKS -> " when all is sound; here it locks the box";
        };
    }
}
