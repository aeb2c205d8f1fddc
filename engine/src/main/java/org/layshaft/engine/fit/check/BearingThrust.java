package org.layshaft.engine.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;

/** What a bearing held its shaft toward, the one in its place or another on the shaft holds it toward still. */
public final class BearingThrust extends Check {
    private static final Limit STILL_HELD = new Limit(
            "must hold the shaft toward the ends that it was held toward, or leave that to another bearing",
            Limit.GEOMETRY);

    public BearingThrust() {
        super("bearing-thrust", "Thrust of a bearing", MeetingKind.THRUST);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Fitted now = judging.now();
        List<String> bearings = now.bearingsOf(judging.meeting().one()).stream()
                .filter(bearing -> isNotUnderAGear(now, bearing))
                .toList();
        List<String> replaced = bearings.stream()
                .filter(bearing -> now.partAt(bearing) != judging.before().partAt(bearing))
                .toList();
        if (replaced.isEmpty()) {
            return Optional.empty();
        }
        List<Figure> figures = new ArrayList<>();
        Set<String> lost = new TreeSet<>();
        for (String bearing : replaced) {
            Held is = judging.at(bearing);
            Held was = judging.was(bearing);
            lost.addAll(ends(was));
            figures.add(Figure.of(is.name(), is.word(FactName.THRUST)));
            figures.add(Figure.of(was.name(), was.word(FactName.THRUST)));
        }
        replaced.forEach(bearing -> lost.removeAll(ends(judging.at(bearing))));
        if (judging.isUntold()) {
            return judging.untold();
        }
        List<Held> others = bearings.stream()
                .filter(bearing -> !replaced.contains(bearing))
                .map(judging::at)
                .toList();
        others.stream().filter(other -> other.has(FactName.THRUST)).forEach(other -> lost.removeAll(ends(other)));
        if (!lost.isEmpty()) {
            // one of which nothing is told might hold it
            others.forEach(other -> other.word(FactName.THRUST));
        }
        return judging.holds(lost.isEmpty(), figures, STILL_HELD);
    }

    private static boolean isNotUnderAGear(Fitted box, String bearing) {
        return !(box.layout().parts().get(bearing) instanceof Bearing of)
                || box.layout().find(Gear.class, of.outer()).isEmpty();
    }

    private static Set<String> ends(Held bearing) {
        return switch (bearing.word(FactName.THRUST)) {
            case "both" -> Set.of("front", "rear");
            case "front" -> Set.of("front");
            case "rear" -> Set.of("rear");
            default -> Set.of();
        };
    }
}
