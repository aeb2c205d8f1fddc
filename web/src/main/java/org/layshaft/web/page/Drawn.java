package org.layshaft.web.page;

import java.util.Optional;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.desk.ByHand;
import org.layshaft.web.desk.Desk;

/**
 * What of an answer is drawn.
 *
 * @param motion empty where there is no one motion
 * @param gear empty for neutral, and where two gears stand engaged
 */
record Drawn(Stance stance, Optional<Motion> motion, Optional<GearVerdict> gear) {

    /** What was set by hand: the gear it is, where it stands as for one. */
    static Drawn byHand(ByHand set, Answer answer) {
        Optional<GearVerdict> gear = answer.whatIf().gears().stream()
                .filter(each -> each.stance().equals(set.stance()))
                .filter(each -> !each.stance().equals(Stance.NEUTRAL))
                .findFirst();
        return new Drawn(set.stance(), Optional.of(set.motion()), gear);
    }

    /** What the question was about. */
    static Drawn asAsked(Answer answer) {
        Optional<GearVerdict> gear = answer.whatIf().gears().stream()
                .filter(each -> each.stance().equals(answer.stance()))
                .filter(each -> !each.stance().equals(Stance.NEUTRAL))
                .findFirst();
        return new Drawn(answer.stance(), answer.motion(), gear);
    }

    /** A gear by name, or neutral. */
    static Drawn inGear(String name, Layout layout, Answer answer, Desk desk) {
        if (name.equalsIgnoreCase(Address.NEUTRAL)) {
            NeutralVerdict neutral = answer.whatIf().neutral();
            return new Drawn(neutral.stance(), Optional.of(neutral.motion()), Optional.empty());
        }
        GearVerdict gear = answer.whatIf().gear(desk.gear(layout, name)).orElseThrow();
        return new Drawn(gear.stance(), Optional.of(gear.motion()), Optional.of(gear));
    }
}
