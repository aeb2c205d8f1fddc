package org.layshaft.web.desk;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.engine.fit.Placement;
import org.layshaft.kb.catalogue.PartSet;

/** Sets against boxes as CSV after RFC 4180, a line for each; what a spreadsheet would take for a formula is made text. */
public final class CrossCsv {
    private static final String LINE_END = "\r\n";
    private static final List<String> HEADINGS =
            List.of("set", "name", "shape", "build", "layout", "box", "verdict", "places tried", "at");

    private CrossCsv() {}

    public static String of(CrossTable table) {
        Stream<List<String>> lines = table.sets().stream()
                .flatMap(set -> table.boxes().stream().map(box -> line(set, box, table.at(set, box))));
        return Stream.concat(Stream.of(HEADINGS), lines)
                .map(line -> line.stream().map(CrossCsv::cell).collect(Collectors.joining(",", "", LINE_END)))
                .collect(Collectors.joining());
    }

    private static List<String> line(PartSet set, BuiltBox box, CrossTable.Cell cell) {
        return List.of(
                set.number(),
                set.name(),
                set.shape().word(),
                box.build().id(),
                box.layout().id(),
                box.build().name(),
                cell == null ? CrossWording.NO_PLACE : cell.best().spoken(),
                cell == null ? "0" : Integer.toString(cell.places()),
                cell == null ? "" : cell.at().stream().map(CrossCsv::places).collect(Collectors.joining("; ")));
    }

    private static String places(Placement placement) {
        return String.join(" ", placement.parts().keySet());
    }

    private static String cell(String text) {
        boolean formula = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
        String safe = formula ? "'" + text : text;
        boolean quoted = safe.chars().anyMatch(sign -> "\",\r\n;".indexOf(sign) >= 0);
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
