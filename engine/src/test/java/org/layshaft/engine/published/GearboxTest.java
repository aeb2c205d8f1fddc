package org.layshaft.engine.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.published.Figures.assertPrinted;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Side;

/** Gearboxes with printed ratios, or printed facts. A reverse is printed with a minus here where its ratio is. */
class GearboxTest {
    /** M-02: U. C. Jindal, Machine Design, example 29-2, p. 751. */
    @ParameterizedTest
    @CsvSource({"T3, FRONT, 5.109", "T4, REAR, 2.291", "T4, FRONT, 1.0", "T3, REAR, -5.676"})
    void m02ThreeSpeedsAndReverse(String member, Side side, String printed) {
        assertPrinted(printed, ratio(PublishedBox.of("m-02").engaged(member, side)));
    }

    /** M-06: expertsmind.com, conventional automobile gear box; second is one of two printed choices. */
    @ParameterizedTest
    @CsvSource({"G, FRONT, 4.0", "C, REAR, 1.333", "C, FRONT, 1", "reverse-idler, REAR, -4.222", "E, FRONT, 2.286"})
    void m06FourSpeedsSlidIntoMesh(String member, Side side, String printed) {
        assertPrinted(printed, ratio(PublishedBox.of("m-06").engaged(member, side)));
    }

    /** M-08: tooth table of a workshop manual; ratios recomputed from its drive and driven teeth, final drive 89/20. */
    @ParameterizedTest
    @CsvSource({
        "1-2-sleeve, FRONT, 15.06",
        "1-2-sleeve, REAR, 7.83",
        "3-4-sleeve, FRONT, 5.25",
        "3-4-sleeve, REAR, 3.98",
        "5-sleeve, FRONT, 3.13"
    })
    void m08ForwardGearsThroughDriveAndDriven(String member, Side side, String printed) {
        assertPrinted(printed, ratio(PublishedBox.of("m-08").engaged(member, side)));
    }

    /** M-08: reverse drives the outside of the 1-2 sleeve, which stands in neutral, and so the wheels the other way. */
    @Test
    void m08ReverseGoesThroughTheOutsideOfTheSleeve() {
        PublishedBox box = PublishedBox.of("m-08");
        Motion reverse = box.engaged("idler", Side.REAR);
        assertEquals(Fraction.of(-49 * 89, 25 * 20), ratio(reverse));
        assertEquals(
                List.of(
                        "input",
                        "drive-reverse",
                        "idler",
                        "sleeve-teeth",
                        "1-2-sleeve",
                        "output",
                        "pinion",
                        "ring-gear"),
                reverse.carrying().stream().limit(8).toList());
        assertTrue(Set.of("driven-first", "driven-second").stream().noneMatch(reverse.carrying()::contains));
    }

    /** M-10: G-W, Manual Drive Trains and Axles, p. 161: six gears on the cluster of a five-speed with overdrive. */
    @Test
    void m10EveryClusterGearButOneServesOneGear() {
        PublishedBox box = PublishedBox.of("m-10");
        List<String> cluster = cluster(box);
        assertEquals(6, cluster.size());
        Set<List<String>> serving = driving(box)
                .map(motion ->
                        motion.carrying().stream().filter(cluster::contains).toList())
                .collect(Collectors.toSet());
        assertEquals(
                Set.of(
                        List.of("driven", "cluster-first"),
                        List.of("driven", "cluster-second"),
                        List.of("driven", "cluster-third"),
                        List.of(), // direct drive has no cluster gear
                        List.of("driven", "cluster-overdrive"),
                        List.of("driven", "cluster-reverse")),
                serving);
    }

    static Stream<PublishedBox> inlineBoxes() {
        return Stream.of(
                PublishedBox.of("m-10"), new PublishedBox(Boxes.the("curlew")), new PublishedBox(Boxes.the("avocet")));
    }

    /** M-10: the same page: the cluster turns whenever the input turns, in neutral and in direct drive too. */
    @ParameterizedTest
    @MethodSource("inlineBoxes")
    void m10TheClusterTurnsWheneverTheInputTurns(PublishedBox box) {
        Fraction always = box.at(Stance.NEUTRAL).speedOf("countershaft").orElseThrow();
        assertEquals(-1, always.signum());
        for (Stance stance : box.oneAtATime()) {
            assertEquals(always, box.at(stance).speedOf("countershaft").orElseThrow(), stance::toString);
        }
    }

    /** M-10: the same page: what the main drive gear meshes with is the largest of the cluster. */
    @ParameterizedTest
    @MethodSource("inlineBoxes")
    void m10TheDrivenGearIsTheLargestOfTheCluster(PublishedBox box) {
        String largest = cluster(box).stream()
                .max(Comparator.comparing(gear -> box.layout().gear(gear).teeth()))
                .orElseThrow();
        assertTrue(box.layout().meshes().stream()
                .anyMatch(mesh -> mesh.joins(largest)
                        && box.layout().gear(mesh.other(largest)).carrier().equals("input")));
    }

    private static List<String> cluster(PublishedBox box) {
        return box.layout()
                .all(Gear.class)
                .filter(gear -> gear.carrier().equals("countershaft"))
                .map(Gear::id)
                .toList();
    }

    private static Stream<Motion> driving(PublishedBox box) {
        return box.oneAtATime().stream().map(box::at).filter(motion -> motion.outcome() == Outcome.DRIVES);
    }

    private static Fraction ratio(Motion motion) {
        return motion.ratio().orElseThrow();
    }
}
