package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Seat;

class ChangeTest {
    private static final Layout CURLEW = Boxes.the("curlew");

    static Stream<Layout> layouts() {
        return Boxes.every().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void theSameGearsChangeNothing(Layout layout) {
        Change same = Change.NONE;
        for (Gear gear : layout.all(Gear.class).toList()) {
            same = same.with(gear);
        }
        assertEquals(layout, same.applyTo(layout));
        assertEquals(0, same.meshesTouched(layout).count());
    }

    /** But for what was printed of the gears that were taken out in between. */
    @ParameterizedTest
    @MethodSource("layouts")
    void thereAndBackIsTheLayoutThatItWas(Layout layout) {
        Change there = Change.NONE;
        Change back = Change.NONE;
        for (Gear gear : layout.all(Gear.class).toList()) {
            there = there.with(Swaps.teeth(layout, gear.id(), gear.teeth() + 2));
            back = back.with(gear);
        }
        for (Mesh mesh :
                layout.everyMesh().filter(mesh -> mesh.kind().isBevel()).toList()) {
            String crown = mesh.second();
            if (layout.everyMesh().filter(other -> other.joins(crown)).count() == 1) {
                there = there.withCrownAcross(crown);
                back = back.withCrownAcross(crown);
            }
        }
        Layout between = there.applyTo(layout);
        layout.all(Gear.class)
                .forEach(gear ->
                        assertEquals(gear.teeth() + 2, between.gear(gear.id()).teeth()));
        Layout again = back.applyTo(between);
        assertEquals(layout.parts(), again.parts());
        assertEquals(layout.meshes(), again.meshes());
        assertEquals(layout.members(), again.members());
        assertEquals(Map.of(), again.printedRatios());
    }

    @Test
    void onlyWhatIsChangedIsTouched() {
        Change third = Swaps.change(CURLEW, Map.of("third", 35));
        assertEquals(
                List.of("third/cluster-third"),
                third.meshesTouched(CURLEW).map(Mesh::id).toList());
        Layout changed = third.applyTo(CURLEW);
        assertEquals(35, changed.gear("third").teeth());
        assertEquals(CURLEW.gear("second"), changed.gear("second"));
        assertEquals(CURLEW.members(), changed.members());
        assertEquals(CURLEW.road(), changed.road());
    }

    @Test
    void tyreAndAxleGoToTheRoad() {
        Road road = Change.NONE
                .with(new OtherTyre.OfSize("205/75 R16"))
                .withAxleRatio(new BigDecimal("3.9"))
                .applyTo(CURLEW)
                .road()
                .orElseThrow();
        assertEquals(Optional.of("205/75 R16"), road.tyre());
        assertEquals(Optional.of(new BigDecimal("3.9")), road.axleRatio());
        assertEquals(CURLEW.road().orElseThrow().engine(), road.engine());
        assertEquals(
                2000,
                Change.NONE
                        .with(new OtherTyre.Rolling(2000))
                        .applyTo(Boxes.the("avocet"))
                        .road()
                        .orElseThrow()
                        .rollingCircumferenceMm()
                        .orElseThrow());
    }

    @Test
    void aCrownGoesAcrossAndNothingElse() {
        Layout sandpiper = Boxes.the("sandpiper");
        Layout across = Change.NONE.withCrownAcross("ring-gear").applyTo(sandpiper);
        assertEquals(
                List.of(MeshKind.BEVEL_OPPOSITE, MeshKind.BEVEL),
                Stream.of(sandpiper, across)
                        .map(layout -> layout.everyMesh()
                                .filter(mesh -> mesh.joins("ring-gear"))
                                .findFirst()
                                .orElseThrow()
                                .kind())
                        .toList());
        assertEquals(sandpiper.parts(), across.parts());
        assertEquals(sandpiper.printedRatios(), across.printedRatios());
    }

    @Test
    void twoChangesTogether() {
        Change third = Swaps.change(CURLEW, Map.of("third", 35)).with(new OtherTyre.Rolling(2000));
        Change both = third.and(
                Swaps.change(CURLEW, Map.of("third", 33, "second", 44)).withAxleRatio(BigDecimal.TEN));
        assertEquals(
                Swaps.change(CURLEW, Map.of("third", 33, "second", 44))
                        .with(new OtherTyre.Rolling(2000))
                        .withAxleRatio(BigDecimal.TEN),
                both);
    }

    /** Its own final drive and another behind it would count twice. */
    @Test
    void aTransaxleHasNoAxleBehindIt() {
        Change axle = Change.NONE.withAxleRatio(BigDecimal.valueOf(4));
        assertEquals(
                List.of(
                        "Plover reaches the wheels by its own final drive, so that there is no axle behind it to change. Change the teeth of its ring gear or of the pinion."),
                assertThrows(ImpossibleFactsException.class, () -> axle.applyTo(Boxes.the("plover")))
                        .problems());
    }

    @Test
    void everythingThatDoesNotSuitIsToldAtOnce() {
        Gear third = CURLEW.gear("third");
        Gear elsewhere = new Gear(
                third.named(),
                "countershaft",
                Seat.FIXED,
                GearForm.INTERNAL,
                4,
                third.moduleMm(),
                third.helixDeg(),
                third.hand(),
                third.pressureAngleDeg());
        Change wrong = new Change(
                Map.of("third", elsewhere, "secnd", CURLEW.gear("second")),
                Set.of("fourth"),
                Optional.empty(),
                Optional.of(BigDecimal.ZERO),
                Optional.empty());
        List<String> problems = assertThrows(ImpossibleFactsException.class, () -> wrong.applyTo(CURLEW))
                .problems();
        assertEquals(
                List.of(
                        "For 'secnd' a gear of the id 'second' is given. Give it the id of the place it goes to.",
                        "Curlew has no gear 'secnd'. Perhaps 'second' is meant.",
                        "third gear would have 4 teeth. It must have at least 5.",
                        "In the place of 'third' goes a gear that sits on 'countershaft', fixed; the place is on 'output', free. Change its teeth, not its place.",
                        "The teeth of 'third' are external; in its place goes a gear whose teeth are internal. They must be alike.",
                        "'fourth' has 0 bevel gears in mesh with it. Only a crown with one pinion can go to its other side.",
                        "The axle ratio is 0. It must be more than 0."),
                problems.stream().sorted(Comparator.comparing(ChangeTest::turn)).toList());
    }

    /** The order in which two gears of an unordered map are looked at does not matter. */
    private static int turn(String problem) {
        return problem.contains("secnd") ? 0 : problem.contains("third") ? 1 : 2;
    }
}
