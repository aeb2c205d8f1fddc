package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.LayoutFinder;
import org.layshaft.web.json.AnswerJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what becomes of every gear of a layout. */
@Command(
        name = "gears",
        description = "Say what becomes of every gear of a layout, sound or with faults.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft gears curlew",
            "  layshaft gears curlew --fault \"3-4-fork bent side=front\" --fault \"interlock missing\""
        })
final class GearsCommand extends Subcommand {
    @Parameters(paramLabel = "LAYOUT", description = "The id of a layout; \"layshaft layouts\" lists them.")
    private String layout;

    @Option(
            names = "--fault",
            paramLabel = "\"PART FAILURE\"",
            description = "Something that is wrong: \"3-4-fork bent\", with what is known of it: \"side=front\"."
                    + " May be given more than once; \"layshaft words\" lists what is known.")
    private List<String> faults = new ArrayList<>();

    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        Layout chosen = LayoutFinder.find(knowledge, layout);
        Desk desk = Desk.over(knowledge);
        Answer answer = desk.gearsLeft(chosen, desk.faults(chosen, faults));
        if (wantsJson()) {
            write(AnswerJson.of(answer, List.of(), chosen, desk.names(chosen), desk.faultWords(chosen)));
        } else {
            write(AnswerText.of(answer, List.of(), chosen, desk.names(chosen)));
        }
        return 0;
    }
}
