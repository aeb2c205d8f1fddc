package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.desk.CanFail;
import org.layshaft.web.desk.FaultTable;
import org.layshaft.web.desk.FaultTable.Seen;
import org.layshaft.web.desk.Wording;

/** What is noticed with some faults as plain text, and what can fail at all. */
final class FaultsText {
    private FaultsText() {}

    static String ofWhatCanFail(Layout layout, List<CanFail> failures) {
        TextTable table = new TextTable("as it is written", "how common", "seen");
        failures.forEach(failure -> table.row(List.of(
                failure.written(),
                Wording.of(failure.mode().common()),
                Wording.of(failure.mode().seenAt()))));
        return new TextPage()
                .paragraph("What can fail in %s (%s), and in brackets what can be told of it:"
                        .formatted(layout.name(), layout.id()))
                .block(table.toString())
                .toString();
    }

    static String of(Layout layout, WhatIf whatIf, Names names, FaultNaming words) {
        FaultTable faults = FaultTable.of(whatIf, names);
        return new TextPage()
                .paragraph("%s with %s. A line that begins with ~ tells what only may be so."
                        .formatted(layout.name(), words.said(whatIf.faults())))
                .block(verdicts(faults))
                .block(rows(faults, names))
                .toString();
    }

    private static String verdicts(FaultTable faults) {
        TextTable table = new TextTable("gears", "what becomes of them");
        for (FaultTable.Column column : faults.columns()) {
            table.row(
                    List.of(Saying.gears(column.gears())),
                    lines(
                            Wording.ofGear(column.verdict()),
                            column.cases().stream()
                                    .map(each -> "%s, if %s".formatted(Wording.ofGear(each.verdict()), each.says()))
                                    .toList()));
        }
        FaultTable.Neutral neutral = faults.neutral();
        table.row(
                List.of("neutral"),
                lines(
                        neutral.exists() ? Wording.ofNeutral(neutral.verdict()) : "there is none, it always drives",
                        neutral.cases().stream()
                                .map(each -> "%s, if %s".formatted(Wording.ofNeutral(each.verdict()), each.says()))
                                .toList()));
        return table.toString();
    }

    private static List<String> lines(String first, List<String> more) {
        List<String> lines = new ArrayList<>(List.of(first));
        lines.addAll(more);
        return lines;
    }

    private static String rows(FaultTable faults, Names names) {
        TextTable table = new TextTable("when", "gears", "what is noticed");
        for (FaultTable.Row row : faults.rows()) {
            String when = names.condition(row.situation());
            for (int column = 0; column < row.cells().size(); column++) {
                String gears = row.situation().isInGear()
                        ? Saying.gears(faults.columns().get(column).gears())
                        : "";
                List<String> seen =
                        row.cells().get(column).stream().map(FaultsText::seen).toList();
                if (!seen.isEmpty()) {
                    table.row(List.of(when, gears), seen);
                    when = "";
                }
            }
        }
        return table.toString();
    }

    private static String seen(Seen seen) {
        String onlyIf = seen.onlyIf().isEmpty() ? "" : ", only if " + Saying.either(seen.onlyIf());
        return (seen.certain() ? "  " : "~ ") + seen.says() + onlyIf;
    }
}
