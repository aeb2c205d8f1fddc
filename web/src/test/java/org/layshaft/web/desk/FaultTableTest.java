package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Verdict;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.Demo;
import org.layshaft.web.desk.FaultTable.Column;
import org.layshaft.web.desk.FaultTable.Row;
import org.layshaft.web.desk.FaultTable.Seen;

class FaultTableTest {
    /** The needles under third turn on their shaft in every gear but their own. */
    @Test
    void gearsThatShowTheSameShareAColumn() {
        FaultTable table = table("curlew", Fault.of("third-needles", "worn"));

        assertEquals(
                List.of(List.of("1", "2", "4", "5", "R"), List.of("3")),
                table.columns().stream().map(Column::gears).toList());
        Row pulling = row(table, Situation.PULLING);
        assertTrue(
                pulling.cells().get(0).stream().anyMatch(seen -> seen.notice().equals("growls") && seen.certain()));
        assertEquals(List.of(), pulling.cells().get(1));
        assertEquals(1, row(table, Situation.NEUTRAL_PEDAL_UP).cells().size());
    }

    @Test
    void whatDependsOnSomethingUntoldSaysOnWhat() {
        FaultTable table = table("curlew", Fault.of("3-4-fork", "bent"));
        Column third = table.columns().stream()
                .filter(column -> column.gears().contains("3"))
                .findFirst()
                .orElseThrow();

        assertEquals(Verdict.UNCERTAIN, third.verdict());
        assertEquals(4, third.cases().size());
        Seen seen = row(table, Situation.SELECTED).cells().get(table.columns().indexOf(third)).stream()
                .filter(each -> each.notice().equals("no-drive"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("the 3-4 fork is bent badly toward the front (4th)"), seen.onlyIf());
        assertEquals("there may be no drive", seen.says());
    }

    /** Twenty-five gears are told in few columns, and no gear is lost. */
    @Test
    void manyGearsStayReadable() {
        Layout heron = Demo.layout("heron");
        FaultTable table = table("heron", Fault.of("oil", "low"));

        assertEquals(
                Demo.desk().box(heron).gears().size(),
                table.columns().stream()
                        .mapToInt(column -> column.gears().size())
                        .sum());
        assertTrue(table.columns().size() <= 8, () -> table.columns().toString());
    }

    private static Row row(FaultTable table, Situation situation) {
        return table.rows().stream()
                .filter(row -> row.situation() == situation)
                .findFirst()
                .orElseThrow();
    }

    private static FaultTable table(String id, Fault fault) {
        Layout layout = Demo.layout(id);
        return FaultTable.of(
                Demo.desk().gearsLeft(layout, List.of(fault)).whatIf(),
                Demo.desk().names(layout));
    }
}
