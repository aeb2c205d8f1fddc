package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.fit.check.NormalModule;
import org.layshaft.engine.fit.check.OnlyWhole;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SetShape;

class CrossTableTest {
    private static final Stock STOCK = new Stock()
            .box("curlew")
            .box("plover")
            .gear("like", 2)
            .gear("unlike", 3)
            .gear("mate", 3)
            .part("untold", ComponentKind.GEAR, Facts.NONE)
            .part("shim", ComponentKind.SHIM, Facts.NONE)
            .set("pair", SetShape.PAIR, true, "gear", "unlike", "mate", "mate");
    private static final PartsCounter COUNTER = STOCK.counter(new NormalModule(), new OnlyWhole());

    private static List<PartSet> sets() {
        return List.of("like", "unlike", "untold", "shim", "pair").stream()
                .map(number -> COUNTER.catalogue().set(number).orElseThrow())
                .toList();
    }

    /** What the table says of a cell is the best of what the whole account says of its places. */
    @ParameterizedTest
    @ValueSource(ints = {0, CompanionSearch.MOST_UNITS})
    void agrees_with_the_account_of_every_place(int mostCompanions) {
        CrossTable table = COUNTER.cross(sets(), COUNTER.boxes().values(), mostCompanions, done -> {});
        for (PartSet set : sets()) {
            for (BuiltBox box : COUNTER.boxes().values()) {
                List<Serving> all = everywhere(set, box);
                CrossTable.Cell cell = table.at(set, box);
                if (all.isEmpty()) {
                    assertNull(cell);
                } else {
                    FitVerdict best = all.get(0).verdict();
                    boolean left = best == FitVerdict.FITS_WITH && mostCompanions == 0;
                    assertEquals(left ? FitVerdict.DOES_NOT_FIT : best, cell.best());
                    assertEquals(all.size(), cell.places());
                    Set<Set<String>> places = all.stream()
                            .filter(serving -> serving.verdict() == cell.best())
                            .filter(serving -> cell.best() != FitVerdict.DOES_NOT_FIT)
                            .map(serving -> serving.placement().parts().keySet())
                            .collect(Collectors.toSet());
                    assertEquals(
                            places,
                            cell.at().stream()
                                    .map(placement -> placement.parts().keySet())
                                    .collect(Collectors.toSet()));
                }
            }
        }
    }

    private static List<Serving> everywhere(PartSet set, BuiltBox box) {
        return COUNTER.placements(set, box).stream()
                .map(placement -> COUNTER.serve(placement, box))
                .sorted(Comparator.comparing(Serving::verdict))
                .toList();
    }

    @Test
    void tells_of_every_set_that_it_is_done() {
        Set<Integer> told = new ConcurrentSkipListSet<>();
        COUNTER.cross(sets(), COUNTER.boxes().values(), 0, told::add);
        assertEquals(new TreeSet<>(Set.of(1, 2, 3, 4, 5)), told);
    }
}
