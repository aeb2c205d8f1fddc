package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** Gears that were lapped together stay together. */
public final class LappedPair extends Check {
    private static final String YES = "yes";
    private static final Limit ITS_MATE = new Limit("must be the mate it was lapped with", "the catalogue");

    public LappedPair() {
        super("lapped-pair", "Lapped pair", MeetingKind.TEETH);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held one = judging.one();
        Held other = judging.other();
        boolean bevel = Forms.anyBevel(one, other);
        if (judging.isUntold()) {
            return judging.untold();
        }
        // cylindrical gears are seldom lapped: there only what is stated counts
        boolean concerned = bevel || saysLapped(one) || saysLapped(other);
        return concerned ? mates(judging, one, other) : Optional.empty();
    }

    private static boolean saysLapped(Held gear) {
        return gear.has(FactName.LAPPED_WITH)
                || gear.has(FactName.LAPPED) && gear.word(FactName.LAPPED).equals(YES);
    }

    private static Optional<Judgement> mates(Judging judging, Held one, Held other) {
        String mateOfOne = mate(one);
        String mateOfOther = mate(other);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return judging.holds(
                isMate(mateOfOne, other) && isMate(mateOfOther, one),
                List.of(Figure.of(one.name(), told(mateOfOne)), Figure.of(other.name(), told(mateOfOther))),
                ITS_MATE);
    }

    private static String mate(Held gear) {
        return gear.word(FactName.LAPPED).equals(YES) ? gear.word(FactName.LAPPED_WITH) : "";
    }

    private static boolean isMate(String mate, Held gear) {
        return mate.isEmpty() || mate.equals(gear.part().number());
    }

    private static String told(String mate) {
        return mate.isEmpty() ? "not lapped" : "lapped with " + mate;
    }
}
