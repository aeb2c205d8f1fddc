package org.layshaft.engine.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** Each gear pushes its shaft the way that the one before did; otherwise the bearings hold the shaft both ways. */
public final class ThrustDirection extends Check {
    private static final String STRAIGHT = "straight";
    private static final String BOTH = "both";
    private static final String FRONT = "front";
    private static final String REAR = "rear";
    private static final Limit HELD = new Limit(
            "must push as before, or the bearings of the shaft must hold it toward both ends",
            Limit.GEOMETRY + ": the other hand pushes the other way");

    public ThrustDirection() {
        super("thrust-direction", "Direction of thrust", MeetingKind.THRUST);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        List<String> replaced = replaced(judging);
        if (replaced.isEmpty()) {
            return Optional.empty();
        }
        List<Figure> figures = new ArrayList<>();
        boolean asBefore = true;
        for (String gear : replaced) {
            Held now = judging.at(gear);
            Held was = judging.was(gear);
            String hand = push(now);
            String handBefore = push(was);
            // straight teeth do not push at all, whatever was there
            asBefore &= hand.equals(handBefore) || hand.equals(STRAIGHT);
            figures.add(Figure.of(now.name(), hand));
            figures.add(Figure.of(was.name(), handBefore));
        }
        if (judging.isUntold()) {
            return judging.untold();
        }
        return judging.holds(asBefore || isHeldBothWays(judging), figures, HELD);
    }

    /** What stays pushes as it did, whatever it is. */
    private static List<String> replaced(Judging judging) {
        Fitted before = judging.before();
        Fitted now = judging.now();
        return now.gearsOn(judging.meeting().one()).stream()
                .filter(gear -> now.partAt(gear) != before.partAt(gear))
                .toList();
    }

    private static String push(Held gear) {
        double helixDeg = gear.number(FactName.HELIX_DEG);
        return helixDeg == 0 ? STRAIGHT : Double.isNaN(helixDeg) ? "" : gear.word(FactName.HAND);
    }

    /** A bearing of which nothing is told is missed only where the others leave an end open. */
    private static boolean isHeldBothWays(Judging judging) {
        List<Held> bearings = judging.now().bearingsOf(judging.meeting().one()).stream()
                .map(judging::at)
                .toList();
        if (isHeld(bearings, FRONT) && isHeld(bearings, REAR)) {
            return true;
        }
        bearings.forEach(bearing -> bearing.word(FactName.THRUST));
        return false;
    }

    private static boolean isHeld(List<Held> bearings, String end) {
        return bearings.stream()
                .filter(bearing -> bearing.has(FactName.THRUST))
                .map(bearing -> bearing.word(FactName.THRUST))
                .anyMatch(thrust -> thrust.equals(end) || thrust.equals(BOTH));
    }
}
