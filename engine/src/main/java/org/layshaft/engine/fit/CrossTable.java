package org.layshaft.engine.fit;

import java.util.List;
import java.util.Map;
import org.layshaft.kb.catalogue.PartSet;

/**
 * Sets against boxes: how each set comes out at each place of each box where it could stand.
 *
 * @param sets the rows
 * @param boxes the columns
 * @param cells row by row; only where the set could stand somewhere in the box
 */
public record CrossTable(List<PartSet> sets, List<BuiltBox> boxes, Map<Crossing, Cell> cells) {
    public CrossTable {
        sets = List.copyOf(sets);
        boxes = List.copyOf(boxes);
        cells = Map.copyOf(cells);
    }

    /** A set and a box, by number and id of the build. */
    public record Crossing(String set, String build) {}

    /**
     * How a set comes out in a box.
     *
     * @param best the best of all places
     * @param at every place that comes out so
     * @param places how many places it was tried at
     */
    public record Cell(FitVerdict best, List<Placement> at, int places) {
        public Cell {
            at = List.copyOf(at);
        }
    }

    /** Null where the box has no place that the set could stand at. */
    public Cell at(PartSet set, BuiltBox box) {
        return cells.get(new Crossing(set.number(), box.build().id()));
    }
}
