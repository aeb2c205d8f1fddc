package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.fit.SetAgain;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;

/** What an exchange that can be made asks of whoever makes it, in sentences. */
public final class ExchangeWording {
    private ExchangeWording() {}

    /** What must be measured and set again; empty where nothing must, or the set does not fit. */
    public static List<String> setAgain(Serving serving) {
        if (serving.verdict() == FitVerdict.DOES_NOT_FIT) {
            return List.of();
        }
        Fitted then = serving.fittedThen();
        Layout layout = then.layout();
        SetAgain again = SetAgain.after(layout, changed(serving));
        List<String> says = new ArrayList<>();
        List<String> endways = named(layout.parts().keySet(), again.endways(), then);
        if (!endways.isEmpty()) {
            says.add(
                    "Measure and set again the end float or preload of %s: shims that suited the old parts suit these only where measuring says so."
                            .formatted(Names.joined(endways)));
        }
        List<String> bevels = named(layout.parts().keySet(), again.bevels(), then);
        if (!bevels.isEmpty()) {
            says.add("Set again the mounting distance and the backlash of %s, and check the contact pattern."
                    .formatted(Names.joined(bevels)));
        }
        return says;
    }

    private static Set<String> changed(Serving serving) {
        Fitted before = serving.box().fitted();
        Set<String> places = new LinkedHashSet<>();
        serving.fittedThen().putIn().forEach((place, part) -> {
            if (before.ownPartAt(place) != part) {
                places.add(place);
            }
        });
        return places;
    }

    private static List<String> named(Set<String> inOrder, Set<String> ids, Fitted fitted) {
        return inOrder.stream()
                .filter(ids::contains)
                .map(id -> "the " + fitted.nameOf(id))
                .toList();
    }

    /** Shafts that are pushed the other way by a gear of the other hand, and what carries that; empty where the set does not fit. */
    public static List<String> thrust(Serving serving) {
        if (serving.verdict() == FitVerdict.DOES_NOT_FIT) {
            return List.of();
        }
        Fitted before = serving.box().fitted();
        Fitted then = serving.fittedThen();
        Map<String, List<String>> turned = new LinkedHashMap<>();
        then.layout()
                .all(Gear.class)
                .filter(gear -> isOtherHand(before.at(gear.id()), then.at(gear.id())))
                .forEach(gear -> turned.computeIfAbsent(gear.carrier(), none -> new ArrayList<>())
                        .add("the " + then.nameOf(gear.id())));
        return turned.entrySet().stream()
                .map(entry -> "The thrust of %s on the %s is the other way round: the teeth wind the other way. %s"
                        .formatted(
                                Names.joined(entry.getValue()),
                                then.nameOf(entry.getKey()),
                                held(entry.getKey(), then)))
                .toList();
    }

    private static boolean isOtherHand(Facts was, Facts is) {
        Optional<String> before = was.find(FactName.HAND).map(fact -> fact.text());
        Optional<String> now = is.find(FactName.HAND).map(fact -> fact.text());
        return before.isPresent() && now.isPresent() && !before.equals(now);
    }

    private static String held(String shaft, Fitted then) {
        List<String> holding = then.layout()
                .all(Bearing.class)
                .filter(bearing -> bearing.inner().equals(shaft))
                .filter(bearing ->
                        then.layout().find(Gear.class, bearing.outer()).isEmpty())
                .flatMap(bearing -> then.at(bearing.id()).find(FactName.THRUST).stream()
                        .filter(fact -> !fact.text().equals("none"))
                        .map(fact -> "the %s %s toward %s"
                                .formatted(
                                        then.nameOf(bearing.id()),
                                        then.partAt(bearing.id()).number(),
                                        fact.text().equals("both") ? "both ends" : "the " + fact.text())))
                .toList();
        return holding.isEmpty()
                ? "Which bearing holds the shaft is not told."
                : "What holds the shaft, and so carries it now: %s.".formatted(Names.joined(holding));
    }
}
