package org.layshaft.web.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.kb.catalogue.PartSet;

/**
 * Sets against boxes.
 *
 * @param companions whether what does not fit as it is was tried with further parts
 * @param cells row by row; only where the set could stand somewhere in the box
 */
public record CrossJson(List<SetJson> sets, List<BuiltBoxJson> boxes, boolean companions, List<CellJson> cells) {

    /**
     * How a set comes out in a box.
     *
     * @param verdict the best of all places
     * @param tried at how many places
     * @param at part numbers by place, for every placement that comes out so; empty where it fits nowhere
     */
    public record CellJson(String set, String build, String verdict, int tried, List<Map<String, String>> at) {}

    public static CrossJson of(CrossTable table, boolean companions) {
        List<CellJson> cells = new ArrayList<>();
        for (PartSet set : table.sets()) {
            for (BuiltBox box : table.boxes()) {
                CrossTable.Cell cell = table.at(set, box);
                if (cell != null) {
                    cells.add(new CellJson(
                            set.number(),
                            box.build().id(),
                            cell.best().word(),
                            cell.places(),
                            cell.at().stream()
                                    .map(placement -> ServingJson.numbers(placement.parts()))
                                    .toList()));
                }
            }
        }
        return new CrossJson(SetJson.all(table.sets()), BuiltBoxJson.all(table.boxes()), companions, cells);
    }
}
