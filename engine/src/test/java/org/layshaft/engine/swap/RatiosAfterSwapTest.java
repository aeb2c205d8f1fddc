package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Stances;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Layout;

/** Ratios of swapped boxes: written by hand pair by pair, and those of a layout typed with the other teeth. */
class RatiosAfterSwapTest {

    /** The pair that the input shares with the countershaft counts in every gear but the one straight through. */
    @Test
    void aSharedPairChangesEveryIndirectGear() {
        Comparison other = Swaps.compare("curlew", Map.of("input-gear", 26, "cluster-driven", 45));
        assertEquals(
                Map.of(
                        "1", of(45 * 52, 26 * 19),
                        "2", of(45 * 43, 26 * 28),
                        "3", of(45 * 34, 26 * 37),
                        "4", of(45 * 29, 26 * 42),
                        "5", Fraction.ONE,
                        "R", of(-45 * 44, 26 * 17)),
                ratios(other));
        for (GearComparison gear : other.gears()) {
            boolean straight = gear.before().orElseThrow().gear().equals("5");
            assertEquals(
                    Optional.of(straight ? Fraction.ONE : of(45 * 24, 26 * 47)),
                    gear.factor(),
                    () -> gear.before().orElseThrow().gear());
        }
    }

    @Test
    void aPairOfOneGearChangesThatGearAlone() {
        Comparison other = Swaps.compare("curlew", Map.of("third", 37, "cluster-third", 34));
        assertEquals(of(47 * 37, 24 * 34), ratios(other).get("3"));
        assertEquals(
                Map.of("1", true, "2", true, "3", false, "4", true, "5", true, "R", true),
                other.gears().stream()
                        .collect(Collectors.toMap(
                                gear -> gear.before().orElseThrow().gear(),
                                gear -> gear.factor().equals(Optional.of(Fraction.ONE)))));
    }

    @Test
    void anIdlerChangesNoRatio() {
        Comparison other = Swaps.compare("curlew", Map.of("reverse-idler", 21));
        other.gears().forEach(gear -> assertEquals(Optional.of(Fraction.ONE), gear.factor()));
    }

    @Test
    void theFinalDriveCountsInEveryGear() {
        Comparison other = Swaps.compare("plover", Map.of("final-drive-pinion", 16, "ring-gear", 70));
        other.gears().forEach(gear -> assertEquals(Optional.of(of(70 * 17, 16 * 69)), gear.factor()));
        assertEquals(of(46 * 70, 13 * 16), ratios(other).get("1").absolute());
    }

    /** Two equal countershafts: with both pairs changed the gear has another ratio. */
    @Test
    void alikeGearsOfTwoCountershaftsChangeTogether() {
        Comparison both = Swaps.compare("heron", Map.of("first", 67, "left-first", 26, "right-first", 26));
        Fraction factor = of(67 * 25, 26 * 68);
        assertEquals(Optional.of(factor), both.gear("2 low slow").factor());
        assertEquals(Optional.of(Fraction.ONE), both.gear("4 low slow").factor());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            curlew     | input-gear 26, cluster-driven 45, third 33, cluster-third 38
            plover     | input-first 14, first 45, output-fifth 24, fifth 35
            redshank   | third 38, cluster-third 34
            lapwing    | input-first 13, first 49
            sandpiper  | input-second 22, second 41, drive-pinion 10
            whimbrel   | cluster-first 20, first 46
            godwit     | input-first 14, first 46
            """)
    void asIfTypedSo(String id, String written, @TempDir Path folder) throws IOException {
        Map<String, Integer> teeth = new LinkedHashMap<>();
        Arrays.stream(written.split(", "))
                .map(gear -> gear.split(" "))
                .forEach(gear -> teeth.put(gear[0], Integer.valueOf(gear[1])));
        Layout layout = Boxes.the(id);
        Layout swapped = Swaps.change(layout, teeth).applyTo(layout);
        Layout typed = Swaps.retyped(id, teeth, folder);
        assertEquals(typed.parts(), swapped.parts());
        for (Stance stance : Stances.all(typed)) {
            assertEquals(ratio(typed, stance), ratio(swapped, stance));
        }
        Map<String, Fraction> solved = Swaps.REASONER.box(typed).gears().stream()
                .collect(Collectors.toMap(
                        gear -> gear.name(), gear -> gear.motion().ratio().orElseThrow()));
        assertEquals(solved, ratios(Swaps.compare(id, teeth)));
    }

    private static Optional<Fraction> ratio(Layout layout, Stance stance) {
        return TrainSolver.solve(new TrainBuilder(layout, Changes.NONE).at(stance))
                .ratio();
    }

    private static Map<String, Fraction> ratios(Comparison comparison) {
        return comparison.gears().stream()
                .flatMap(gear -> gear.after().stream())
                .collect(Collectors.toMap(GearFigures::gear, GearFigures::ratio));
    }

    private static Fraction of(long above, long below) {
        return Fraction.of(above, below);
    }
}
