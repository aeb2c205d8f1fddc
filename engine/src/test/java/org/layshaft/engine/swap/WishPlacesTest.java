package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/** Which pair a wish is met by, in boxes of every family. */
class WishPlacesTest {
    private static final Fraction FIVE_PER_CENT = Fraction.of(1, 20);

    static Stream<Layout> layouts() {
        return Boxes.every().stream();
    }

    /** Wished for the ratio that is there, at the distance that the teeth have by themselves, the solver finds what is there. */
    @ParameterizedTest
    @MethodSource("layouts")
    void whatIsThereIsFoundAgain(Layout layout) {
        Box box = Swaps.REASONER.box(layout);
        for (Box.DerivedGear gear : box.gears()) {
            Optional<PairPlace> place = new PairPlaces(layout, box).ownOf(gear).value();
            if (place.isEmpty() || place.get().moduleMm().isEmpty()) {
                continue;
            }
            List<Proposal> found = new WishSolver(layout, Swaps.REASONER)
                    .solve(new Wish.RatioOf(gear.name(), gear.ratio(), FIVE_PER_CENT), rules(place.get()))
                    .value()
                    .orElseThrow();
            assertTrue(
                    found.stream()
                            .anyMatch(each -> each.distance().isZero()
                                    && each.unlikeNow() == 0
                                    && layout.parts()
                                            .equals(each.changes()
                                                    .applyTo(layout)
                                                    .parts())),
                    () -> layout.id() + " " + gear.name() + " " + found);
            for (Proposal each : found.subList(0, Math.min(8, found.size()))) {
                assertEquals(Optional.of(each.ratio()), solved(layout, gear, each), layout.id());
            }
        }
    }

    /** Fourth of Godwit shares its driving gear with fifth: that one stays. */
    @Test
    void aSharedGearStays() {
        Layout godwit = Boxes.the("godwit");
        PairPlace place = place(godwit, "4");
        List<Proposal> found = new WishSolver(godwit, Swaps.REASONER)
                .solve(new Wish.RatioOf("4", place.ratio(), FIVE_PER_CENT), rules(place))
                .value()
                .orElseThrow();
        assertEquals(
                Set.of(32),
                found.stream()
                        .map(each -> each.mesh().first().equals("input-fourth-fifth")
                                ? each.firstTeeth()
                                : each.secondTeeth())
                        .collect(Collectors.toSet()));
        assertTrue(found.size() > 1);
        assertTrue(found.stream().allMatch(each -> each.unlikeNow() == 0));
    }

    /** Both countershafts of Heron get the new gear. */
    @Test
    void alikeGearsChangeTogether() {
        PairPlace place = place(Boxes.the("heron"), "2 low slow");
        assertEquals(Set.of("first", "left-first", "right-first"), place.gears().collect(Collectors.toSet()));
    }

    @Test
    void aPairThatIsNamedMayBeShared() {
        Layout plover = Boxes.the("plover");
        Mesh finalDrive = plover.everyMesh()
                .filter(mesh -> mesh.joins("ring-gear"))
                .findFirst()
                .orElseThrow();
        double centre = 2.5 * (17 + 69) / 2 / Math.cos(Math.toRadians(25));
        GearRules rules = new GearRules(OptionalDouble.of(centre), List.of(2.5), 20, 30, -0.3, 1.2, 12, 80);
        Fraction fifth = Fraction.of(25 * 69, 34 * 17);
        List<Proposal> found = new WishSolver(plover, Swaps.REASONER)
                .solve(new Wish.RatioOf("5", fifth.times(Fraction.of(9, 10)), Fraction.of(3, 100)), finalDrive, rules)
                .value()
                .orElseThrow();
        assertFalse(found.isEmpty());
        for (Proposal each : found) {
            int ring = each.mesh().first().equals("ring-gear") ? each.firstTeeth() : each.secondTeeth();
            int pinion = each.mesh().first().equals("ring-gear") ? each.secondTeeth() : each.firstTeeth();
            assertEquals(Fraction.of(25L * ring, 34L * pinion), each.ratio());
        }
    }

    @Test
    void bevelsAndIdlePairsAreRefused() {
        Layout sandpiper = Boxes.the("sandpiper");
        Box box = Swaps.REASONER.box(sandpiper);
        PairPlaces places = new PairPlaces(sandpiper, box);
        Mesh crown = sandpiper
                .everyMesh()
                .filter(mesh -> mesh.joins("ring-gear"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                Optional.of(
                        "cannot be told, drive pinion and ring gear do not mesh on parallel shafts, and no centre distance binds their teeth"),
                places.of(box.gears().get(0), crown).whyNot());
        Mesh second = sandpiper
                .everyMesh()
                .filter(mesh -> mesh.joins("second"))
                .findFirst()
                .orElseThrow();
        assertTrue(places.of(box.gears().get(0), second).whyNot().orElseThrow().endsWith("carry no power in 1st"));
    }

    private static PairPlace place(Layout layout, String gear) {
        Box box = Swaps.REASONER.box(layout);
        return new PairPlaces(layout, box)
                .ownOf(box.gears().stream()
                        .filter(each -> each.name().equals(gear))
                        .findFirst()
                        .orElseThrow())
                .value()
                .orElseThrow();
    }

    private static Optional<Fraction> solved(Layout layout, Box.DerivedGear gear, Proposal proposal) {
        Layout changed = proposal.changes().applyTo(layout);
        return TrainSolver.solve(new TrainBuilder(changed, Changes.NONE).at(gear.stance()))
                .ratio()
                .map(Fraction::absolute);
    }

    /** At the distance of the teeth without shift; the pinions of some boxes would be undercut so, hence no bound on teeth. */
    private static GearRules rules(PairPlace place) {
        Gear first = place.first();
        Gear second = place.second();
        int teeth = first.form() == GearForm.EXTERNAL && second.form() == GearForm.EXTERNAL
                ? first.teeth() + second.teeth()
                : Math.abs(first.teeth() - second.teeth());
        double centre = place.moduleMm().getAsDouble() * teeth / 2 / Math.cos(Math.toRadians(place.helixDeg()));
        return new GearRules(OptionalDouble.of(centre), List.of(2.5), 0, 35, -0.6, 1.2, 10, 110);
    }
}
