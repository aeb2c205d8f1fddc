package org.layshaft.web.cli;

import java.util.List;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.web.desk.PartsDesk;

/** What the catalogue lists, as plain text. */
final class PartsText {
    private PartsText() {}

    static String of(PartsDesk parts, String words) {
        List<PartSet> sets = parts.holding(words);
        TextPage page = new TextPage();
        if (sets.isEmpty()) {
            return page.paragraph("Nothing in the catalogue holds \"%s\".".formatted(words))
                    .toString();
        }
        TextTable table = new TextTable("number", "name", "shape", "parts");
        sets.forEach(set -> table.row(List.of(
                set.number(),
                set.name(),
                set.shape().word(),
                String.join(" ", set.parts().values()))));
        page.block(table.toString());
        TextTable boxes = new TextTable("box", "layout", "name", "serial numbers");
        parts.counter().boxes().values().forEach(box -> boxes.row(row(box)));
        return page.block(boxes.toString()).toString();
    }

    private static List<String> row(BuiltBox box) {
        return List.of(
                box.build().id(),
                box.layout().id(),
                box.build().name(),
                box.build().serials().words());
    }
}
