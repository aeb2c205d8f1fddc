package org.layshaft.web.gallery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.Demo;

/** What is derived of the demo boxes, against what their files say of them in words, and against other roads to it. */
class LikenessTest {
    static Stream<Likeness> all() {
        return Demo.desk().knowledge().layouts().values().stream().map(LikenessTest::of);
    }

    @ParameterizedTest
    @CsvSource({
        "curlew, INLINE, 5, 3, DOG_SLEEVE",
        "avocet, INLINE, 4, 3, SLIDING_IDLER",
        "phalarope, INLINE, 4, 3, SLIDING_GEAR",
        "plover, TRANSAXLE, 5, 2, SLIDING_IDLER",
        "lapwing, TRANSAXLE, 6, 2, SYNCHRONISED_SLEEVE",
        "sandpiper, TRANSAXLE, 5, 2, DOG_SLEEVE",
        "godwit, TRANSAXLE, 6, 3, SYNCHRONISED_SLEEVE",
        "turnstone, OFFSET, 6, 3, NONE",
        "oystercatcher, TRANSFER, 2, 4, NONE",
        "dotterel, TRANSFER, 1, 4, NONE",
        "knot, AXLE, 1, 1, NONE",
        "ruff, AXLE, 1, 3, NONE",
        "egret, VEHICLE, 5, 4, DOG_SLEEVE",
        "crane, VEHICLE, 10, 11, DOG_SLEEVE"
    })
    void whatTheDemoBoxesAre(String id, Family family, int forward, int shafts, ReverseBy reverse) {
        Likeness likeness = of(Demo.layout(id));

        assertEquals(family, likeness.family());
        assertEquals(forward, likeness.forward());
        assertEquals(shafts, likeness.shafts());
        assertEquals(reverse, likeness.reverseBy());
    }

    /** A word in the summary of a layout, written by whoever typed it, and the property derived without it. */
    @ParameterizedTest
    @CsvSource({
        "INLINE, Inline|inline",
        "TRANSAXLE, transaxle",
        "OVERDRIVE, overdrive",
        "EPICYCLIC, epicyclic",
        "LIMITED_SLIP, limited-slip|torque-sensing",
        "TWIN, twin-countershaft",
        "CLUTCHES, Dual-clutch",
        "TAKE_OFF, power take-off",
        "DRUM, shift drum",
        "REVERSE_BY_IDLER, sliding idler"
    })
    void whatTheSummariesSayIsDerived(Property property, String words) {
        List<String> said = all().filter(each ->
                        Stream.of(words.split("\\|")).anyMatch(each.layout().summary()::contains))
                .map(each -> each.layout().id())
                .toList();

        assertFalse(said.isEmpty());
        assertTrue(
                all().filter(property::holds)
                        .map(each -> each.layout().id())
                        .toList()
                        .containsAll(said),
                () -> property + " of " + said);
    }

    /** By the printed ratios: a gear is direct where the data print 1, and the top is an overdrive where they print less. */
    @Test
    void printedRatiosAgreeOnDirectAndOverdrive() {
        List<Likeness> boxes = all().filter(each -> each.family() == Family.INLINE)
                .filter(each -> !each.layout().printedRatios().isEmpty())
                .toList();

        assertTrue(boxes.size() > 3);
        boxes.forEach(each -> {
            List<Double> printed = each.layout().printedRatios().entrySet().stream()
                    .filter(gear -> !gear.getKey().startsWith("R"))
                    .map(gear -> gear.getValue().doubleValue())
                    .toList();
            assertEquals(printed.contains(1.0), each.direct(), each.layout().id());
            assertEquals(
                    printed.stream().anyMatch(ratio -> ratio < 1),
                    each.overdrive(),
                    each.layout().id());
        });
    }

    /** By counting rings: every forward gear is synchronised where each gear that a sleeve ties for one has a ring. */
    @Test
    void ringsAgreeOnSynchronised() {
        Likeness plover = of(Demo.layout("plover"));
        long ringed = plover.layout()
                .all(BlockingRing.class)
                .map(BlockingRing::gear)
                .distinct()
                .count();

        assertTrue(plover.synchronised());
        assertEquals(plover.forward(), ringed);
        assertFalse(of(Demo.layout("avocet")).synchronised());
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyLayoutIsOfOneFamilyAndHasReverseOneWay(Likeness likeness) {
        List<Property> properties = Property.of(likeness);

        assertEquals(
                1,
                properties.stream()
                        .filter(each -> each.facet() == Property.Facet.FAMILY)
                        .count());
        assertEquals(
                likeness.box().gears().stream().anyMatch(gear -> gear.direction() == Direction.REVERSE),
                likeness.reverse() > 0);
        assertEquals(likeness.reverse() == 0, likeness.reverseBy() == ReverseBy.NONE);
    }

    /** The other road: a wheel is shared where its speed counts in the product of teeth of several gears, tried by taking teeth away. */
    @Test
    void sharedWheelsAreThoseWhoseTeethChangeSeveralRatios() {
        Layout curlew = Demo.layout("curlew");
        List<Shared> shared = Shared.in(Demo.desk().box(curlew));

        assertEquals(
                List.of("1", "2", "3", "4", "R"),
                shared.stream()
                        .filter(each -> each.part().equals("cluster-driven"))
                        .findFirst()
                        .orElseThrow()
                        .gears());
        int driven = curlew.the(Gear.class, "cluster-driven").teeth();
        for (DerivedGear gear : Demo.desk().box(curlew).gears()) {
            Fraction without = gear.ratio().over(Fraction.of(driven));
            boolean counts = without.denominator().longValue() % driven != 0;
            assertEquals(counts, !gear.name().equals("5"), gear.name());
        }
    }

    private static Likeness of(Layout layout) {
        return Likeness.of(Demo.desk().box(layout));
    }
}
