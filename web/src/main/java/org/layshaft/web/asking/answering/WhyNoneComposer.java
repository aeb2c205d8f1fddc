package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Verdict;

/** Why no gear drives; or that some do. */
final class WhyNoneComposer {
    private final Facts facts;

    WhyNoneComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose() {
        List<GearVerdict> gears = facts.whatIf().gears();
        boolean none =
                gears.stream().allMatch(gear -> gear.verdict() == Verdict.LOST || gear.verdict() == Verdict.LOCKS);
        List<String> says = new ArrayList<>();
        if (!none) {
            says.add(
                    facts.isSound()
                            ? "Nothing is said to be wrong, and then every gear drives. Say what is wrong, or what is noticed."
                            : "That is not so with this.");
        }
        says.addAll(new Standing(facts).of(gears));
        gears.stream()
                .filter(gear ->
                        gear.verdict() != Verdict.WORKS && !gear.possibilities().isEmpty())
                .flatMap(gear -> new Because(facts).of(gear.possibilities().get(0)).stream())
                .distinct()
                .limit(none ? 4 : 0)
                .forEach(says::add);
        return Composed.of(says);
    }
}
