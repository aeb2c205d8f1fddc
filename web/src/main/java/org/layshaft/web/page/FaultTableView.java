package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.desk.FaultTable;
import org.layshaft.web.desk.FaultTable.Case;
import org.layshaft.web.desk.FaultTable.Seen;
import org.layshaft.web.desk.Wording;

/**
 * Everything that is noticed with what is supposed: situations down, gears across.
 *
 * @param verdicts one for each column, neutral last
 * @param apiHref the same as JSON
 */
record FaultTableView(List<String> columns, List<VerdictCell> verdicts, List<RowView> rows, String apiHref) {

    /** What becomes of the gears of a column. */
    record VerdictCell(MarkView mark, String verdict, List<CaseView> cases) {
        public boolean hasCases() {
            return !cases.isEmpty();
        }
    }

    /** One way things may be. */
    record CaseView(String says, MarkView mark, String verdict) {}

    /** One situation; its cells are one for each column, or one across all. */
    record RowView(String situation, List<CellView> cells) {}

    /** @param across how many columns it takes up */
    record CellView(int across, List<SeenView> seen) {
        public boolean isWide() {
            return across > 1;
        }

        public boolean isEmpty() {
            return seen.isEmpty();
        }
    }

    /**
     * Something noticed.
     *
     * @param sign of its certainty
     * @param depends what decides whether it is noticed; null where it is certain
     */
    record SeenView(MarkView sign, String says, String depends, ReasonView because) {}

    public MarkView certainSign() {
        return MarkView.ofCertainty(true);
    }

    public MarkView perhapsSign() {
        return MarkView.ofCertainty(false);
    }

    /** The table; null where nothing is supposed to be wrong. */
    static FaultTableView of(Scene scene) {
        if (scene.faults().isEmpty()) {
            return null;
        }
        FaultTable table = FaultTable.of(scene.answer().whatIf(), scene.names());
        List<String> columns = new ArrayList<>(table.columns().stream()
                .map(column -> Saying.sentence(Saying.gears(column.gears())))
                .toList());
        List<VerdictCell> verdicts = new ArrayList<>(table.columns().stream()
                .map(column -> new VerdictCell(
                        MarkView.of(column.verdict()),
                        Wording.ofGear(column.verdict()),
                        column.cases().stream().map(each -> ofGear(each)).toList()))
                .toList());
        if (table.neutral().exists()) {
            Verdict neutral = table.neutral().verdict();
            columns.add("Neutral");
            verdicts.add(new VerdictCell(
                    MarkView.of(neutral),
                    Wording.ofNeutral(neutral),
                    table.neutral().cases().stream()
                            .map(each -> ofNeutral(each))
                            .toList()));
        }
        return new FaultTableView(
                columns,
                verdicts,
                table.rows().stream()
                        .map(row -> row(row, table, columns.size(), scene.names()))
                        .toList(),
                scene.address().faultsApi());
    }

    private static CaseView ofGear(Case each) {
        return new CaseView(each.says(), MarkView.of(each.verdict()), Wording.ofGear(each.verdict()));
    }

    private static CaseView ofNeutral(Case each) {
        return new CaseView(each.says(), MarkView.of(each.verdict()), Wording.ofNeutral(each.verdict()));
    }

    private static RowView row(FaultTable.Row row, FaultTable table, int across, Names names) {
        List<CellView> cells = new ArrayList<>();
        if (row.situation().isInGear()) {
            row.cells().forEach(cell -> cells.add(new CellView(1, seen(cell))));
            if (table.neutral().exists()) {
                cells.add(new CellView(1, List.of()));
            }
        } else {
            cells.add(new CellView(across, seen(row.cells().get(0))));
        }
        return new RowView(Saying.sentence(names.condition(row.situation())), cells);
    }

    private static List<SeenView> seen(List<Seen> cell) {
        return cell.stream()
                .map(each -> new SeenView(
                        MarkView.ofCertainty(each.certain()),
                        each.says(),
                        each.certain() ? null : depends(each),
                        ReasonView.of(each.because())))
                .toList();
    }

    private static String depends(Seen seen) {
        return seen.onlyIf().isEmpty() ? "that depends on how bad it is" : "only if " + Saying.either(seen.onlyIf());
    }
}
