package org.layshaft.web.json;

import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.desk.CanFail;
import org.layshaft.web.desk.FaultTable;

/**
 * What is noticed with some faults, situation by situation; without faults, what can fail.
 *
 * @param columns gears that show the same throughout
 * @param neutral what the lever in neutral does; null without faults, or where there is no neutral
 * @param canFail everything that can fail; empty where faults are given
 */
public record FaultsJson(
        String layout,
        List<FaultJson> faults,
        List<ColumnJson> columns,
        NeutralJson neutral,
        List<RowJson> conditions,
        List<CanFailJson> canFail) {

    /** Gears that show the same, and what becomes of them. */
    public record ColumnJson(List<String> gears, String verdict, List<CaseJson> cases) {}

    /** The lever in neutral. */
    public record NeutralJson(String verdict, List<CaseJson> cases) {}

    /** One way things may be, where that is not known and matters. */
    public record CaseJson(String says, String verdict) {
        static List<CaseJson> all(List<FaultTable.Case> cases) {
            return cases.stream()
                    .map(each -> new CaseJson(each.says(), each.verdict().word()))
                    .toList();
        }
    }

    /**
     * One situation in which something is noticed.
     *
     * @param condition id among the conditions of {@code words}
     * @param cells one for each column; one alone where the situation is not in gear
     */
    public record RowJson(String condition, String name, boolean inGear, List<List<SeenJson>> cells) {}

    /**
     * Something noticed.
     *
     * @param onlyIf the cases in which it may be, where it is not in all
     * @param because why, in the first gear of the column
     */
    public record SeenJson(
            String notice, String heat, boolean certain, List<String> onlyIf, String says, ReasonJson because) {
        static SeenJson of(FaultTable.Seen seen) {
            return new SeenJson(
                    seen.notice(),
                    seen.heat().map(Heat::word).orElse(null),
                    seen.certain(),
                    seen.onlyIf(),
                    seen.says(),
                    ReasonJson.of(seen.because()));
        }
    }

    /** One way in which one part can fail. */
    public record CanFailJson(
            String part,
            String name,
            String mode,
            String written,
            Map<String, List<String>> told,
            String common,
            String seenAt) {
        static CanFailJson of(CanFail failure) {
            return new CanFailJson(
                    failure.part().id(),
                    failure.part().name(),
                    failure.mode().name(),
                    failure.fault().written(),
                    failure.tellable(),
                    Spelling.of(failure.mode().common()),
                    failure.mode().seenAt().word());
        }
    }

    public static FaultsJson ofWhatCanFail(Layout layout, List<CanFail> failures) {
        return new FaultsJson(
                layout.id(),
                List.of(),
                List.of(),
                null,
                List.of(),
                failures.stream().map(CanFailJson::of).toList());
    }

    public static FaultsJson of(Layout layout, WhatIf whatIf, Names names, FaultNaming words) {
        FaultTable table = FaultTable.of(whatIf, names);
        FaultTable.Neutral neutral = table.neutral();
        return new FaultsJson(
                layout.id(),
                FaultJson.all(whatIf.faults(), words),
                table.columns().stream()
                        .map(column ->
                                new ColumnJson(column.gears(), column.verdict().word(), CaseJson.all(column.cases())))
                        .toList(),
                neutral.exists() ? new NeutralJson(neutral.verdict().word(), CaseJson.all(neutral.cases())) : null,
                table.rows().stream().map(row -> row(row, names)).toList(),
                List.of());
    }

    private static RowJson row(FaultTable.Row row, Names names) {
        return new RowJson(
                row.situation().word(),
                names.condition(row.situation()),
                row.situation().isInGear(),
                row.cells().stream()
                        .map(cell -> cell.stream().map(SeenJson::of).toList())
                        .toList());
    }
}
