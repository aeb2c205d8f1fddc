package org.layshaft.engine.swap;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;

/**
 * Looks through a catalogue for sets that serve in a box, as they are or with companions, and meet a wish.
 *
 * @param reasoner keeps every changed layout that it is asked about: one that is let go afterwards
 */
public record SetsForWish(PartsCounter counter, Reasoner reasoner) {
    private static final Comparator<SetOffer> BEST_FIRST = Comparator.comparing(SetOffer::distance)
            .thenComparing(offer -> offer.serving().verdict())
            .thenComparing(offer -> offer.serving().companions().size())
            .thenComparing(offer -> offer.serving().placement().set().number());

    /**
     * The nearest to the wish first; of those equally near, what fits as it is before what wants companions. None where
     * no set that serves meets the wish.
     */
    public Telling<List<SetOffer>> in(BuiltBox box, Wish wish) {
        Layout layout = FittedGears.layout(box.fitted());
        Vehicle vehicle = vehicle(layout);
        return WishSolver.known(wish, vehicle.gearing().ratios().keySet(), layout)
                .target(vehicle)
                .map(target -> offers(box, layout, wish, target));
    }

    private List<SetOffer> offers(BuiltBox box, Layout layout, Wish wish, Target target) {
        List<SetOffer> offers = new ArrayList<>();
        Collection<PartSet> sets = counter.catalogue().sets().values();
        Stream<PartSet> parts = counter.catalogue().parts().values().stream().map(PartSet::of);
        Stream.concat(sets.stream(), parts)
                .flatMap(set -> counter.placements(set, box).stream())
                .filter(placement ->
                        changesTeeth(layout, box.fitted(), box.fitted().with(placement.parts())))
                .map(placement -> counter.serve(placement, box))
                .filter(serving -> serving.verdict() == FitVerdict.FITS || serving.verdict() == FitVerdict.FITS_WITH)
                .forEach(serving -> offer(serving, layout, wish, target).ifPresent(offers::add));
        offers.sort(BEST_FIRST);
        return offers;
    }

    private static boolean changesTeeth(Layout layout, Fitted before, Fitted then) {
        return FittedGears.change(before, then)
                .value()
                .filter(change -> changesTeeth(layout, change))
                .isPresent();
    }

    private static boolean changesTeeth(Layout layout, Change change) {
        return change.gears().values().stream()
                .anyMatch(gear -> gear.teeth() != layout.gear(gear.id()).teeth());
    }

    private Optional<SetOffer> offer(Serving serving, Layout layout, Wish wish, Target target) {
        return FittedGears.change(serving.box().fitted(), serving.fittedThen())
                .value()
                .flatMap(change -> ratio(pushesFor(wish.gear(), layout), change.applyTo(layout))
                        .filter(target::isMetBy)
                        .map(ratio -> new SetOffer(serving, change, ratio, target.distance(ratio))));
    }

    private List<Box.Push> pushesFor(String gear, Layout layout) {
        return reasoner.box(layout).gears().stream()
                .filter(each -> each.name().equals(gear))
                .map(Box.DerivedGear::pushes)
                .findFirst()
                .orElseThrow();
    }

    /** Without sign, of the same place of the levers, whatever it is called then; empty where it gives no gear any more. */
    private Optional<Fraction> ratio(List<Box.Push> pushes, Layout changed) {
        return reasoner.box(changed).gears().stream()
                .filter(each -> each.pushes().equals(pushes))
                .map(each -> each.ratio().absolute())
                .findFirst();
    }

    private Vehicle vehicle(Layout layout) {
        return Vehicle.of(reasoner.box(layout), layout.road().orElse(Road.NOTHING));
    }
}
