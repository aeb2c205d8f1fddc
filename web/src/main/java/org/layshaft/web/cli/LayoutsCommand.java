package org.layshaft.web.cli;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.gallery.Gallery;
import org.layshaft.web.json.GalleryJson;
import org.layshaft.web.json.LayoutsJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the layouts that are loaded, or those that are like what is looked for. */
@Command(
        name = "layouts",
        description = "List the layouts that are loaded, or those that are like what is looked for.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft layouts --packs my-packs",
            "  layshaft layouts --where \"two-shaft, five-speed, reverse on a sleeve\""
        })
final class LayoutsCommand extends Subcommand {
    @Option(
            names = "--where",
            paramLabel = "WORDS",
            description = "Only those like this: \"transaxle, six-speed, reverse synchronised, no chain\".")
    private String where;

    @Override
    public Integer call() {
        if (where != null) {
            return like();
        }
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

    private Integer like() {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        Reasoner reasoner = Reasoners.standard(knowledge);
        GalleryJson found = GalleryJson.of(
                new Gallery(knowledge, reasoner::box).find(Optional.of(where), List.of(), Optional.empty()));
        if (wantsJson()) {
            write(found);
        } else {
            write(text(found));
        }
        return 0;
    }

    private static String text(GalleryJson found) {
        TextPage page = new TextPage();
        page.list("Understood as:", found.understood());
        if (!found.notUnderstood().isEmpty()) {
            page.paragraph("Passed over, not understood: %s.".formatted(String.join(", ", found.notUnderstood())));
        }
        if (found.layouts().isEmpty()) {
            return page.paragraph("None of the %d layouts is like that.".formatted(found.outOf()))
                    .toString();
        }
        TextTable table = new TextTable("layout", "what it is", "forward", "shafts", "reverse");
        found.layouts()
                .forEach(layout -> table.row(List.of(
                        layout.id(),
                        layout.family(),
                        String.valueOf(layout.forward()),
                        String.valueOf(layout.shafts()),
                        layout.reverseBy())));
        return page.block(table.toString()).toString();
    }
}
