package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.CanFail;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.LayoutFinder;
import org.layshaft.web.json.FaultsJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Says what is noticed with some faults, situation by situation and gear by gear; without any, what can fail. */
@Command(
        name = "faults",
        description = "Say what is noticed with some faults, in which situation and which gear."
                + " Without a fault, list everything that can fail, as it is written.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft faults curlew",
            "  layshaft faults curlew \"third-needles worn\"",
            "  layshaft faults curlew \"3-4-fork bent side=front\" \"1-2-detent weak\""
        })
final class FaultsCommand extends Subcommand {
    @Parameters(
            index = "0",
            paramLabel = "LAYOUT",
            description = "The id of a layout; \"layshaft layouts\" lists them.")
    private String layout;

    @Parameters(
            index = "1..*",
            paramLabel = "\"PART FAILURE\"",
            description = "Something that is wrong: \"3-4-fork bent\", with what is known of it: \"side=front\".")
    private List<String> faults = new ArrayList<>();

    @Override
    public Integer call() {
        KnowledgeBase knowledge = faults.isEmpty() ? knowledge() : knowledgeToReasonWith();
        Layout chosen = LayoutFinder.find(knowledge, layout);
        if (faults.isEmpty()) {
            list(knowledge, chosen);
        } else {
            table(Desk.over(knowledge), chosen);
        }
        return 0;
    }

    private void list(KnowledgeBase knowledge, Layout chosen) {
        List<CanFail> failures = CanFail.all(knowledge, chosen);
        if (wantsJson()) {
            write(FaultsJson.ofWhatCanFail(chosen, failures));
        } else {
            write(FaultsText.ofWhatCanFail(chosen, failures));
        }
    }

    private void table(Desk desk, Layout chosen) {
        List<Fault> supposed = desk.faults(chosen, faults);
        WhatIf whatIf = desk.gearsLeft(chosen, supposed).whatIf();
        if (wantsJson()) {
            write(FaultsJson.of(chosen, whatIf, desk.names(chosen), desk.faultWords(chosen)));
        } else {
            write(FaultsText.of(chosen, whatIf, desk.names(chosen), desk.faultWords(chosen)));
        }
    }
}
