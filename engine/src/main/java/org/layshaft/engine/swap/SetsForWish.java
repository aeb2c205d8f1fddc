package org.layshaft.engine.swap;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.fit.Placement;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;

/**
 * Looks through a catalogue for sets whose teeth meet a wish, and says of each whether it serves. The teeth are looked at
 * first, because they decide far sooner than the checks of fit: a set is taken by its own teeth, and left out again where
 * those of its companions undo what it does.
 *
 * @param reasoner tells the gears of the box as it is; it is asked about nothing else
 */
public record SetsForWish(PartsCounter counter, Reasoner reasoner) {

    /** What cannot be told of the wish cannot be told of any set. */
    public Telling<WishedSets> in(BuiltBox box, Wish wish) {
        Layout layout = FittedGears.layout(box.fitted());
        Box derived = reasoner.box(layout);
        Vehicle vehicle = Vehicle.of(derived, layout.road().orElse(Road.NOTHING));
        WishSolver.known(wish, vehicle.gearing().ratios().keySet(), layout);
        Stance stance = derived.gears().stream()
                .filter(gear -> gear.name().equals(wish.gear()))
                .map(Box.DerivedGear::stance)
                .findFirst()
                .orElseThrow();
        return wish.target(vehicle).map(target -> new Looking(box, layout, stance, target).sets());
    }

    /** One box, in the gear that the wish is about. */
    private final class Looking {
        private final BuiltBox box;
        private final Layout layout;
        private final Stance stance;
        private final Target target;
        /** Many parts have the same teeth at the same place. */
        private final Map<Map<String, Integer>, Optional<Fraction>> ratios = new ConcurrentHashMap<>();

        Looking(BuiltBox box, Layout layout, Stance stance, Target target) {
            this.box = box;
            this.layout = layout;
            this.stance = stance;
            this.target = target;
        }

        WishedSets sets() {
            List<Placement> changing = Stream.concat(
                            counter.catalogue().sets().values().stream(),
                            counter.catalogue().parts().values().stream().map(PartSet::of))
                    .flatMap(set -> counter.placements(set, box).stream())
                    .filter(placement -> changesTeeth(box.fitted().with(placement.parts())))
                    .toList();
            List<SetOffer> offers = changing.parallelStream()
                    .filter(placement -> change(box.fitted().with(placement.parts()))
                            .flatMap(this::ratio)
                            .filter(target::isMetBy)
                            .isPresent())
                    .map(placement -> counter.serve(placement, box))
                    .flatMap(serving -> offer(serving).stream())
                    .sorted(SetOffer.BEST_FIRST)
                    .toList();
            return new WishedSets(changing.size(), eachOnce(offers));
        }

        private boolean changesTeeth(Fitted then) {
            return change(then)
                    .map(this::teeth)
                    .filter(teeth -> !teeth.isEmpty())
                    .isPresent();
        }

        private Optional<Change> change(Fitted then) {
            return FittedGears.change(layout, box.fitted(), then).value();
        }

        private Map<String, Integer> teeth(Change change) {
            Map<String, Integer> teeth = new TreeMap<>();
            change.gears().forEach((id, gear) -> {
                if (gear.teeth() != layout.gear(id).teeth()) {
                    teeth.put(id, gear.teeth());
                }
            });
            return teeth;
        }

        /** Without sign, of the same place of the levers, whatever it is called then; empty where it gives no gear any more. */
        private Optional<Fraction> ratio(Change change) {
            return ratios.computeIfAbsent(teeth(change), teeth -> solved(change));
        }

        private Optional<Fraction> solved(Change change) {
            try {
                return TrainSolver.solve(new TrainBuilder(change.applyTo(layout), Changes.NONE).at(stance))
                        .ratio()
                        .map(Fraction::absolute);
            } catch (ImpossibleFactsException unlike) {
                // a bevel gear in the place of a spur gear and the like: it gives no gear at all
                return Optional.empty();
            }
        }

        private Optional<SetOffer> offer(Serving serving) {
            return change(serving.fittedThen())
                    .flatMap(change -> ratio(change)
                            .filter(target::isMetBy)
                            .map(ratio -> new SetOffer(serving, change, ratio, target.distance(ratio))));
        }
    }

    /** A pair comes to the same as one of its gears with the other as its companion: the first of such, which wants the fewest. */
    private static List<SetOffer> eachOnce(List<SetOffer> bestFirst) {
        Map<Map<String, String>, SetOffer> once = new LinkedHashMap<>();
        bestFirst.forEach(offer -> once.putIfAbsent(putIn(offer), offer));
        return List.copyOf(once.values());
    }

    private static Map<String, String> putIn(SetOffer offer) {
        Map<String, String> numbers = new LinkedHashMap<>();
        Map<String, CataloguePart> parts = offer.serving().fittedThen().putIn();
        parts.keySet().stream()
                .sorted()
                .forEach(place -> numbers.put(place, parts.get(place).number()));
        return numbers;
    }
}
