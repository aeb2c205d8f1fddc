package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.Asked;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.LayoutFinder;
import org.layshaft.web.json.AnswerJson;
import org.layshaft.web.json.ProblemJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers a question put in words. */
@Command(
        name = "ask",
        description = "Answer a question put in words.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft ask --layout curlew \"which gears still work if the 3-4 fork is bent\"",
            "  layshaft ask --layout plover \"trace the power in reverse\"",
            "  layshaft ask --layout curlew --after \"ratio of third\" \"and in fourth?\""
        })
final class AskCommand extends Subcommand {
    @Option(names = "--layout", paramLabel = "LAYOUT", description = "The layout that is meant.")
    private String layout;

    @Option(
            names = "--fault",
            paramLabel = "\"PART FAILURE\"",
            description = "Something that is wrong besides what the question supposes. May be given more than once.")
    private List<String> faults = new ArrayList<>();

    @Option(
            names = "--after",
            paramLabel = "\"QUESTION\"",
            description = "The question before, for one that follows it: \"and in fourth?\".")
    private String after;

    @Parameters(paramLabel = "\"QUESTION\"", arity = "1..*", description = "The question.")
    private List<String> question;

    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        Optional<Layout> chosen = Optional.ofNullable(layout).map(id -> LayoutFinder.find(knowledge, id));
        Desk desk = Desk.over(knowledge);
        try {
            answer(desk, desk.ask(chosen, faults, whole(desk, chosen)));
        } catch (BadInputException e) {
            if (wantsJson() && e.kind() == BadInputException.Kind.NOT_UNDERSTOOD) {
                write(ProblemJson.of(e));
            }
            throw e;
        }
        return 0;
    }

    private String whole(Desk desk, Optional<Layout> chosen) {
        return desk.standingAlone(chosen, String.join(" ", question), Optional.ofNullable(after));
    }

    private void answer(Desk desk, Asked asked) {
        Layout meant = desk.layout(asked.answer().question().layout());
        if (wantsJson()) {
            write(AnswerJson.of(asked.answer(), asked.others(), meant, desk.names(meant), desk.faultWords(meant)));
        } else {
            write(AnswerText.of(asked.answer(), asked.others(), meant, desk.names(meant)));
        }
    }
}
