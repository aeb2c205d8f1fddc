package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.AxleForCruise;
import org.layshaft.engine.swap.Change;
import org.layshaft.engine.swap.OtherTyre;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.web.desk.WishAnswer.AxleChoice;
import org.layshaft.web.desk.WishRead.WishedAxle;

/** Which axle ratio meets a wish, of those that the final drives of the catalogue have. */
record AxleWish(Catalogue catalogue, Layout layout, Box box, Vehicle vehicle) {

    WishAnswer.OfAxle of(WishedAxle wished) {
        Telling<Fraction> now = behind();
        AxleForCruise axle = new AxleForCruise(now.then(any -> exact(wished).exact()));
        Map<Fraction, List<PartSet>> sets = finalDrives();
        return new WishAnswer.OfAxle(
                wished.gear(),
                now,
                axle.exact(),
                axle.among(sets.keySet())
                        .map(choices -> choices.stream()
                                .map(choice -> new AxleChoice(choice, sets.get(choice.ratio())))
                                .toList()));
    }

    /** Behind a box that reaches the wheels by itself there is no axle to choose. */
    private Telling<Fraction> behind() {
        return layout.finalDrives().isEmpty()
                ? Telling.of(vehicle.gearing().behind(), "the axle ratio")
                : Telling.cannotBeTold(List.of(
                        "the final drive of %s is one of its own pairs; wish an engine speed, and its sets are looked through"
                                .formatted(layout.name())));
    }

    private AxleForCruise exact(WishedAxle wished) {
        Vehicle then = wished.tyre().map(this::on).orElse(vehicle);
        return wished.rpm()
                .flatMap(rpm -> wished.kmh().map(kmh -> AxleForCruise.at(then, wished.gear(), kmh, rpm)))
                .orElseGet(() -> AxleForCruise.onOtherTyres(
                        Telling.of(vehicle.gearing().behind(), "the axle ratio"), rolls(vehicle), rolls(then)));
    }

    private static Telling<Fraction> rolls(Vehicle on) {
        return on.tyre().map(tyre -> Fraction.of(tyre.mm()));
    }

    private Vehicle on(String tyre) {
        return Vehicle.of(
                box,
                Change.NONE
                        .with(new OtherTyre.OfSize(tyre))
                        .applyTo(layout)
                        .road()
                        .orElse(Road.NOTHING));
    }

    private Map<Fraction, List<PartSet>> finalDrives() {
        Map<Fraction, List<PartSet>> sets = new LinkedHashMap<>();
        catalogue.sets().values().stream()
                .filter(set -> set.shape() == SetShape.FINAL_DRIVE)
                .forEach(set -> ratio(set)
                        .ifPresent(ratio -> sets.computeIfAbsent(ratio, none -> new ArrayList<>())
                                .add(set)));
        return sets;
    }

    private Optional<Fraction> ratio(PartSet set) {
        return teeth(set, "ring-gear").flatMap(ring -> teeth(set, "pinion").map(pinion -> Fraction.of(ring, pinion)));
    }

    private Optional<Integer> teeth(PartSet set, String role) {
        return Optional.ofNullable(set.parts().get(role))
                .flatMap(catalogue::part)
                .flatMap(part -> part.facts().find(FactName.TEETH))
                .map(fact -> (int) fact.number());
    }
}
