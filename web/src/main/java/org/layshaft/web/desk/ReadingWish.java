package org.layshaft.web.desk;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.Change;
import org.layshaft.engine.swap.Comparison;
import org.layshaft.engine.swap.DrivenGears;
import org.layshaft.engine.swap.Running;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.WishAnswer.DrivenChoice;

/** Which driven speed gear of the catalogue keeps the reading right, beside the driving gear that there is. */
record ReadingWish(PartsDesk parts, Layout layout, Optional<BuiltBox> built) {
    private static final Comparator<Serving> BEST_FIRST = Comparator.comparing(Serving::verdict)
            .thenComparing(serving -> serving.placement().parts().size())
            .thenComparing(serving -> serving.placement().set().number());

    WishAnswer.OfReading of(Change change) {
        Telling<SpeedometerChange> upset = Comparison.of(layout, change, Running.NOT_STATED, parts.passingReasoner())
                .speedometer();
        Telling<Integer> driven = Telling.of(
                built.flatMap(box -> teeth(box.fitted(), Build.SPEED_DRIVEN)),
                "how many teeth the driven speed gear has");
        Telling<DrivenGears> right = driven.map(teeth -> DrivenGears.after(upset, teeth));
        Map<Integer, Serving> serving = built.map(this::serving).orElse(Map.of());
        return new WishAnswer.OfReading(
                upset,
                driven,
                right.then(DrivenGears::exact),
                right.then(gears -> gears.among(serving.keySet()))
                        .map(choices -> choices.stream()
                                .map(choice -> new DrivenChoice(choice, serving.get(choice.teeth())))
                                .toList()));
    }

    /** By the teeth of the driven gear, whatever serves best there and leaves the teeth of the driving gear. */
    private Map<Integer, Serving> serving(BuiltBox box) {
        Optional<Integer> driving = teeth(box.fitted(), Build.SPEED_DRIVING);
        Map<Integer, Serving> best = new TreeMap<>();
        Stream.concat(
                        parts.catalogue().sets().values().stream(),
                        parts.catalogue().parts().values().stream().map(PartSet::of))
                .flatMap(set -> parts.counter().placements(set, box).stream())
                .filter(placement -> placement.parts().containsKey(Build.SPEED_DRIVEN))
                .map(placement -> parts.counter().serve(placement, box))
                .filter(each -> teeth(each.fittedThen(), Build.SPEED_DRIVING).equals(driving))
                .sorted(BEST_FIRST)
                .forEach(each ->
                        teeth(each.fittedThen(), Build.SPEED_DRIVEN).ifPresent(teeth -> best.putIfAbsent(teeth, each)));
        return best;
    }

    private static Optional<Integer> teeth(Fitted fitted, String place) {
        return fitted.at(place).find(FactName.TEETH).map(fact -> (int) fact.number());
    }
}
