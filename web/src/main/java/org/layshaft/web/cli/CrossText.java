package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.web.desk.FitWording;

/** Sets against boxes as plain text: a column of letters for each box, with a key to boxes and letters. */
final class CrossText {
    private final CrossTable table;
    private final boolean companions;

    private CrossText(CrossTable table, boolean companions) {
        this.table = table;
        this.companions = companions;
    }

    static String of(CrossTable table, boolean companions) {
        return new CrossText(table, companions).write();
    }

    private String write() {
        TextPage page = new TextPage();
        List<String> headings = new ArrayList<>(List.of("set"));
        IntStream.rangeClosed(1, table.boxes().size())
                .mapToObj(Integer::toString)
                .forEach(headings::add);
        headings.add("name");
        TextTable rows = new TextTable(headings.toArray(String[]::new));
        table.sets().forEach(set -> rows.row(row(set)));
        page.block(rows.toString());
        TextTable boxes = new TextTable("", "box", "");
        IntStream.range(0, table.boxes().size())
                .forEach(at -> boxes.row(List.of(
                        Integer.toString(at + 1),
                        table.boxes().get(at).build().id(),
                        FitWording.of(table.boxes().get(at)))));
        page.block(boxes.toString());
        return page.list(
                        "Letters:",
                        Stream.concat(
                                        Stream.of(FitVerdict.values())
                                                .filter(verdict -> companions || verdict != FitVerdict.FITS_WITH)
                                                .map(verdict -> "%s: %s".formatted(letter(verdict), meaning(verdict))),
                                        Stream.of(".: there is no place where it could stand"))
                                .toList())
                .toString();
    }

    private String meaning(FitVerdict verdict) {
        return verdict == FitVerdict.DOES_NOT_FIT && !companions
                ? "does not fit as it is; --companions tries it with further parts"
                : verdict.spoken();
    }

    private List<String> row(PartSet set) {
        List<String> cells = new ArrayList<>(List.of(set.number()));
        table.boxes().forEach(box -> {
            CrossTable.Cell cell = table.at(set, box);
            cells.add(cell == null ? "." : letter(cell.best()));
        });
        cells.add(set.name());
        return cells;
    }

    private static String letter(FitVerdict verdict) {
        return switch (verdict) {
            case FITS -> "F";
            case FITS_WITH -> "W";
            case CANNOT_BE_TOLD -> "?";
            case DOES_NOT_FIT -> "n";
        };
    }
}
