package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.fit.check.NormalModule;
import org.layshaft.engine.fit.check.OnlyWhole;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SetShape;

/** Gears of the Curlew that fit where their mates have the same module; nothing else is looked at. */
class CompanionsTest {

    private static Serving serve(Stock stock, String number, String place) {
        PartsCounter counter = stock.counter(new NormalModule(), new OnlyWhole());
        BuiltBox box = counter.boxes().get("curlew");
        PartSet set = counter.catalogue().set(number).orElseThrow();
        return counter.placements(set, box).stream()
                .filter(placement -> placement.parts().containsKey(place))
                .map(placement -> counter.serve(placement, box))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<String>> ordered(Serving serving) {
        return serving.companions().stream()
                .map(companions -> companions.units().stream()
                        .map(PartSet::number)
                        .sorted()
                        .toList())
                .toList();
    }

    @Test
    void a_gear_of_the_same_module_fits_as_it_is() {
        Serving serving = serve(new Stock().box("curlew").gear("new", 2), "new", "third");
        assertEquals(FitVerdict.FITS, serving.verdict());
        assertEquals(List.of(), serving.companions());
    }

    @Test
    void a_gear_of_another_module_wants_its_mate() {
        Stock stock = new Stock().box("curlew").gear("new", 3).gear("mate", 3).gear("other", 4);
        Serving serving = serve(stock, "new", "third");
        assertEquals(FitVerdict.FITS_WITH, serving.verdict());
        assertEquals(List.of(List.of("mate"), List.of("new")), sorted(ordered(serving)));
        Companions mate = serving.companions().get(0);
        assertTrue(mate.parts().containsKey("cluster-third"));
        assertEquals("normal-module", mate.cures().get(0).check().id());
    }

    @Test
    void three_gears_in_a_row_want_two() {
        Stock stock = new Stock().box("curlew").gear("new", 3).gear("A", 3);
        Serving serving = serve(stock, "new", "reverse");
        assertEquals(FitVerdict.FITS_WITH, serving.verdict());
        assertEquals(2, serving.companions().get(0).units().size());
    }

    @Test
    void without_a_mate_in_the_catalogue_it_does_not_fit() {
        Stock stock = new Stock()
                .box("curlew")
                .gear("new", 3)
                .gear("far", 3)
                .gear("off", 5)
                .set("W", SetShape.PAIR, true, "gear", "new", "mate", "far")
                .set("V", SetShape.PAIR, true, "gear", "new", "mate", "off");
        Serving alone = serve(stock, "V", "third");
        assertEquals(FitVerdict.DOES_NOT_FIT, alone.verdict());
        assertEquals(List.of(), alone.companions());
        assertEquals(
                List.of("normal-module"),
                alone.failing().map(judgement -> judgement.check().id()).toList());
    }

    @Test
    void a_mate_of_which_nothing_is_told_is_no_companion() {
        Stock stock = new Stock().box("curlew").gear("new", 3).part("dark", ComponentKind.GEAR, Facts.NONE);
        Serving serving = serve(stock, "new", "third");
        assertEquals(List.of(List.of("new")), ordered(serving));
    }

    /** A dozen mates that come with a gear of which nothing is told, and one that comes with a gear of the right module. */
    @Test
    void what_can_be_told_is_found_behind_however_much_that_cannot() {
        Stock stock = new Stock().box("curlew").gear("new", 3).part("dark", ComponentKind.GEAR, Facts.NONE);
        for (int number = 10; number <= 22; number++) {
            stock.gear("M" + number, 3);
            String second = "dark";
            if (number == 22) {
                stock.gear("like", 2);
                second = "like";
            }
            stock.set("S" + number, SetShape.SHAFT, true, "cluster-third", "M" + number, "second", second);
        }
        Serving serving = serve(stock, "new", "third");
        assertEquals(FitVerdict.FITS_WITH, serving.verdict());
        assertTrue(
                ordered(serving).contains(List.of("S22")),
                () -> ordered(serving).toString());
    }

    @Test
    void what_is_only_sold_whole_brings_the_rest_of_it() {
        Stock stock = new Stock()
                .box("curlew")
                .gear("one", 2)
                .gear("two", 2)
                .set("W", SetShape.PAIR, true, "gear", "one", "mate", "two");
        Serving serving = serve(stock, "one", "third");
        assertEquals(FitVerdict.FITS_WITH, serving.verdict());
        assertEquals(List.of(List.of("W")), ordered(serving));
    }

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** The other road: every choice of up to two further units, tried one after another. */
    @ParameterizedTest
    @MethodSource("seeds")
    void no_smaller_choice_of_parts_would_do(int seed) {
        Random random = new Random(seed);
        Stock stock = new Stock().box("curlew").gear("asked", 3);
        for (int number = 0; number < 4; number++) {
            stock.gear("G" + number, 2 + random.nextInt(3));
        }
        stock.set("S0", SetShape.PAIR, random.nextBoolean(), "gear", "G0", "mate", "G1");
        stock.set("S1", SetShape.PAIR, random.nextBoolean(), "gear", "G2", "mate", "G3");
        String place =
                List.of("third", "reverse", "reverse-idler", "cluster-driven").get(random.nextInt(4));

        Serving serving = serve(stock, "asked", place);
        int fewest = fewest(stock, place);
        int found = serving.verdict() == FitVerdict.FITS_WITH
                ? serving.companions().get(0).units().size()
                : Integer.MAX_VALUE;
        if (fewest <= 2 || found <= 2) {
            assertEquals(fewest, found);
        }
    }

    private static int fewest(Stock stock, String place) {
        PartsCounter counter = stock.counter(new NormalModule(), new OnlyWhole());
        BuiltBox box = counter.boxes().get("curlew");
        List<Placement> all = new ArrayList<>();
        stock.units().forEach(unit -> all.addAll(counter.placements(unit, box)));
        Map<String, CataloguePart> asked =
                Map.of(place, counter.catalogue().part("asked").orElseThrow());
        for (int units = 1; units <= 2; units++) {
            for (Placement first : all) {
                for (Placement second : units == 1 ? List.of(first) : all) {
                    if (serves(asked, first, second, box)) {
                        return units;
                    }
                }
            }
        }
        return Integer.MAX_VALUE;
    }

    /** By the meaning of the two checks, without asking them. */
    private static boolean serves(Map<String, CataloguePart> asked, Placement first, Placement second, BuiltBox box) {
        Map<String, CataloguePart> put = new HashMap<>(asked);
        for (Placement placement : List.of(first, second)) {
            for (Map.Entry<String, CataloguePart> entry : placement.parts().entrySet()) {
                CataloguePart before = put.putIfAbsent(entry.getKey(), entry.getValue());
                if (before != null && !before.number().equals(entry.getValue().number())) {
                    return false;
                }
            }
        }
        boolean mesh = box.layout()
                .everyMesh()
                .allMatch(each -> modules(each.first(), put, box).equals(modules(each.second(), put, box)));
        return mesh && put.values().stream().allMatch(part -> isWhole(part, put, box));
    }

    private static String modules(String place, Map<String, CataloguePart> put, BuiltBox box) {
        CataloguePart part = put.getOrDefault(place, box.fitted().ownPartAt(place));
        return part.facts().all().iterator().next().text();
    }

    private static boolean isWhole(CataloguePart part, Map<String, CataloguePart> put, BuiltBox box) {
        List<PartSet> sets = box.fitted().onlyIn(part);
        return sets.isEmpty()
                || sets.stream()
                        .anyMatch(set -> set.parts().values().stream()
                                .allMatch(number -> put.values().stream()
                                        .anyMatch(there -> there.number().equals(number))));
    }

    private static List<List<String>> sorted(List<List<String>> lists) {
        return lists.stream()
                .sorted((one, other) -> one.toString().compareTo(other.toString()))
                .toList();
    }
}
