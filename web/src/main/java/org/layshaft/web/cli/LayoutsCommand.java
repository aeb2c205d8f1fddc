package org.layshaft.web.cli;

import java.util.List;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.json.LayoutsJson;
import picocli.CommandLine.Command;

/** Lists the layouts that are loaded. */
@Command(
        name = "layouts",
        description = "List the layouts that are loaded.",
        footerHeading = "%nExample:%n",
        footer = "  layshaft layouts --packs my-packs")
final class LayoutsCommand extends Subcommand {
    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledge();
        LayoutsJson layouts = LayoutsJson.of(knowledge);
        if (wantsJson()) {
            write(layouts);
        } else {
            TextTable table = new TextTable("layout", "name", "pack", "what it is");
            layouts.layouts()
                    .forEach(layout -> table.row(List.of(layout.id(), layout.name(), layout.pack(), layout.summary())));
            write(table.toString());
        }
        return 0;
    }
}
