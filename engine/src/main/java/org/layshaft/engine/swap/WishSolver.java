package org.layshaft.engine.swap;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Road;

/**
 * Looks for teeth that meet a wish, at the shafts that there are.
 *
 * @param reasoner tells the gears of the layout; it is asked about nothing else
 */
public record WishSolver(Layout layout, Reasoner reasoner) {
    private static final Comparator<Proposal> BEST_FIRST = Comparator.comparing(Proposal::distance)
            .thenComparing(Proposal::unlikeNow)
            .thenComparing(proposal -> Math.abs(proposal.shiftSum()))
            .thenComparing(Proposal::firstTeeth);

    /** Where any change in the right sense will do, tools and mates that are there count for more than the last per mille. */
    private static final Comparator<Proposal> AS_NOW_FIRST =
            Comparator.comparing(Proposal::unlikeNow).thenComparing(BEST_FIRST);

    /**
     * By the pair that only this gear has.
     *
     * @return the nearest to the wish first; of those equally near, first those with module and helix as they are now,
     *     then those with the least profile shift. Of a wish to be nearer another gear, those with module and helix as
     *     they are now come first of all. None where no teeth within the rules meet the wish
     * @throws org.layshaft.engine.stated.ImpossibleFactsException where the box has no such gear, or a fact makes no sense
     */
    public Telling<List<Proposal>> solve(Wish wish, GearRules rules) {
        Box box = reasoner.box(layout);
        return solve(wish, rules, new PairPlaces(layout, box).ownOf(gear(box, wish)), box);
    }

    /** The same by another pair that the power goes through, though it may change other gears too. */
    public Telling<List<Proposal>> solve(Wish wish, Mesh mesh, GearRules rules) {
        Box box = reasoner.box(layout);
        return solve(wish, rules, new PairPlaces(layout, box).of(gear(box, wish), mesh), box);
    }

    /**
     * The pair that only this gear has, and that {@link #solve} gives other teeth.
     *
     * @throws org.layshaft.engine.stated.ImpossibleFactsException where the box has no such gear
     */
    public Telling<Mesh> pairFor(Wish wish) {
        Box box = reasoner.box(layout);
        return new PairPlaces(layout, box).ownOf(gear(box, wish)).map(PairPlace::mesh);
    }

    /**
     * What ratio the wish comes to.
     *
     * @throws org.layshaft.engine.stated.ImpossibleFactsException where the box has no such gear, or a fact makes no sense
     */
    public Telling<Target> targetOf(Wish wish) {
        Box box = reasoner.box(layout);
        gear(box, wish);
        return wish.target(vehicle(box));
    }

    private Vehicle vehicle(Box box) {
        return Vehicle.of(box, layout.road().orElse(Road.NOTHING));
    }

    private Telling<List<Proposal>> solve(Wish wish, GearRules rules, Telling<PairPlace> place, Box box) {
        return place.then(pair -> centreMm(pair, rules)
                .with(
                        wish.target(vehicle(box)),
                        (centre, target) -> new PairSearch(pair, rules, centre, target)
                                .all()
                                .sorted(wish instanceof Wish.Nearer ? AS_NOW_FIRST : BEST_FIRST)
                                .toList()));
    }

    private static Telling<Double> centreMm(PairPlace pair, GearRules rules) {
        return Telling.of(
                rules.centreMm().isPresent() ? Optional.of(rules.centreMm().getAsDouble()) : Optional.empty(),
                "the centre distance of %s and %s"
                        .formatted(pair.first().name(), pair.second().name()));
    }

    private static Box.DerivedGear gear(Box box, Wish wish) {
        List<String> names = box.gears().stream().map(Box.DerivedGear::name).toList();
        known(wish, names, box.layout());
        return box.gears().get(names.indexOf(wish.gear()));
    }

    /** The wish, where the layout has every gear that it speaks of. */
    static Wish known(Wish wish, Collection<String> names, Layout layout) {
        Objections objections = new Objections();
        wish.gears()
                .forEach(gear -> objections.unless(
                        names.contains(gear),
                        "%s has no gear '%s'. %s",
                        layout.name(),
                        gear,
                        Nearest.advice(gear, names)));
        objections.refuse();
        return wish;
    }
}
