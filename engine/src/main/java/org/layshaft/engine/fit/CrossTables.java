package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import org.layshaft.kb.catalogue.PartSet;

/** Makes cross tables, on all processors. */
final class CrossTables {
    private static final int SHEAF = 16;

    private final PartsCounter counter;
    private final int mostCompanions;

    /** @param mostCompanions how many further units are tried where a set does not fit as it is */
    CrossTables(PartsCounter counter, int mostCompanions) {
        this.counter = counter;
        this.mostCompanions = mostCompanions;
    }

    /** @param progress is told how many sets are done, from any thread */
    CrossTable of(Collection<PartSet> sets, Collection<BuiltBox> boxes, IntConsumer progress) {
        Map<CrossTable.Crossing, CrossTable.Cell> cells = new ConcurrentHashMap<>();
        AtomicInteger done = new AtomicInteger();
        List<PartSet> rows = List.copyOf(sets);
        List<BuiltBox> columns = List.copyOf(boxes);
        sheaves(rows).parallelStream().forEach(sheaf -> {
            for (BuiltBox box : columns) {
                sheaf.forEach(set -> cross(set, box, cells));
            }
            sheaf.forEach(set -> progress.accept(done.incrementAndGet()));
        });
        return new CrossTable(rows, columns, cells);
    }

    /** Sets that are held against each box one after another, while what is known of the box is at hand. */
    private static List<List<PartSet>> sheaves(List<PartSet> rows) {
        List<List<PartSet>> sheaves = new ArrayList<>();
        for (int from = 0; from < rows.size(); from += SHEAF) {
            sheaves.add(rows.subList(from, Math.min(rows.size(), from + SHEAF)));
        }
        return sheaves;
    }

    private void cross(PartSet set, BuiltBox box, Map<CrossTable.Crossing, CrossTable.Cell> cells) {
        List<Placement> placements = counter.placements(set, box);
        if (!placements.isEmpty()) {
            cells.put(new CrossTable.Crossing(set.number(), box.build().id()), cell(placements, box));
        }
    }

    private CrossTable.Cell cell(List<Placement> placements, BuiltBox box) {
        FitVerdict best = FitVerdict.DOES_NOT_FIT;
        List<Placement> at = new ArrayList<>();
        for (Placement placement : placements) {
            FitVerdict verdict = counter.quickly(placement, box, mostCompanions);
            if (verdict.compareTo(best) < 0) {
                best = verdict;
                at.clear();
            }
            if (verdict == best && best != FitVerdict.DOES_NOT_FIT) {
                at.add(placement);
            }
        }
        return new CrossTable.Cell(best, at, placements.size());
    }
}
