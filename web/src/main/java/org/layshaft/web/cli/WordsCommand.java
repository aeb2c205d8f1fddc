package org.layshaft.web.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.words.Term;
import org.layshaft.web.json.WordsJson;
import picocli.CommandLine.Command;

/** Lists the parts, the ways in which they fail, and the other words that are known. */
@Command(
        name = "words",
        description = "List the parts, failures, signs and conditions that are known, and their other names.",
        footerHeading = "%nExample:%n",
        footer = "  layshaft words --json")
final class WordsCommand extends Subcommand {
    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledge();
        if (wantsJson()) {
            write(WordsJson.of(knowledge));
        } else {
            write(text(knowledge));
        }
        return 0;
    }

    private static String text(KnowledgeBase knowledge) {
        TextPage page = new TextPage();
        page.paragraph("How a part can fail, and what can be told of it:").block(failures(knowledge.failureModes()));
        for (Layout layout : knowledge.layouts().values()) {
            page.paragraph("Parts of %s (%s):".formatted(layout.name(), layout.id()))
                    .block(parts(layout));
        }
        page.paragraph("What is noticed:").block(terms(knowledge.words().notices()));
        page.paragraph("When it is noticed:").block(terms(knowledge.words().conditions()));
        page.paragraph("Other names:").block(terms(knowledge.words().terms()));
        page.list(
                "Questions that are understood, for example:",
                knowledge.words().phrases().stream()
                        .flatMap(phrase -> phrase.examples().stream().limit(2))
                        .toList());
        return page.toString();
    }

    private static String failures(List<FailureMode> modes) {
        TextTable table = new TextTable("part", "failure", "also", "what can be told");
        modes.forEach(mode -> table.row(List.of(
                mode.befalls().word(), mode.name(), String.join(", ", mode.also()), tellable(mode.unlessTold()))));
        return table.toString();
    }

    private static String tellable(Map<String, List<String>> unlessTold) {
        return unlessTold.entrySet().stream()
                .map(entry -> entry.getKey() + "=" + String.join("|", entry.getValue()))
                .collect(Collectors.joining(" "));
    }

    private static String parts(Layout layout) {
        TextTable table = new TextTable("part", "name", "also");
        layout.parts()
                .values()
                .forEach(part -> table.row(List.of(part.id(), part.name(), String.join(", ", part.also()))));
        return table.toString();
    }

    private static String terms(Map<String, Term> terms) {
        TextTable table = new TextTable("word", "also", "what it means");
        terms.values().forEach(term -> table.row(List.of(term.name(), String.join(", ", term.also()), term.means())));
        return table.toString();
    }
}
