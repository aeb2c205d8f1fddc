package org.layshaft.web.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Evidence;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.BadInputException.Kind;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.Diagnosis;
import org.layshaft.web.desk.DiagnosisDesk;
import org.layshaft.web.desk.LayoutFinder;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.SavedDiagnosis;
import org.layshaft.web.json.SuspectsJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Goes back from what is noticed to what may be wrong. */
@Command(
        name = "suspects",
        description = "Say what may be wrong, going by what was noticed and what was not, and what to try next.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft suspects curlew \"growls in neutral, not with the pedal down, quiet in 4th\"",
            "  layshaft suspects curlew \"pulling 3: jumps-out\" \"overrun 3: not jumps-out\" --after-work",
            "  layshaft suspects curlew \"grinds going into 2nd\" --save second.json",
            "  layshaft suspects curlew --from second.json \"cold shifting-into 2: grinds-going-in\""
        })
final class SuspectsCommand extends Subcommand {
    @Parameters(
            index = "0",
            paramLabel = "LAYOUT",
            description = "The id of a layout; \"layshaft layouts\" lists them.")
    private String layout;

    @Parameters(
            index = "1..*",
            paramLabel = "OBSERVATION",
            description = "What was noticed, or was not, in plain words or as written: \"pulling 3: not growls\"."
                    + " \"layshaft words\" lists what can be noticed, and when.")
    private List<String> seen = new ArrayList<>();

    @Option(names = "--after-work", description = "It began after the box, or something around it, had been apart.")
    private boolean afterWork;

    @Option(names = "--from", paramLabel = "FILE", description = "A diagnosis saved before, to be carried on.")
    private Path from;

    @Option(names = "--save", paramLabel = "FILE", description = "Where to save this diagnosis.")
    private Path save;

    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        Layout chosen = LayoutFinder.find(knowledge, layout);
        Desk desk = Desk.over(knowledge);
        DiagnosisDesk diagnosis = desk.diagnosis();
        Diagnosis comesTo = diagnosis.diagnose(chosen, diagnosis.evidence(chosen, written(chosen)));
        if (save != null) {
            save(SavedDiagnosis.of(comesTo));
        }
        if (wantsJson()) {
            write(SuspectsJson.of(comesTo, desk.faultWords(chosen)));
        } else {
            write(SuspectsText.of(comesTo, observation -> desk.diagnosis().say(chosen, observation)));
        }
        return 0;
    }

    private List<String> written(Layout chosen) {
        List<String> written = new ArrayList<>();
        Optional.ofNullable(from).map(this::saved).ifPresent(saved -> {
            if (!saved.layout().equals(chosen.id())) {
                throw new BadInputException(
                        Kind.UNFIT,
                        "%s is a diagnosis of \"%s\", and not of \"%s\". Name that layout."
                                .formatted(from, saved.layout(), chosen.id()));
            }
            written.addAll(saved.seen());
        });
        written.addAll(seen);
        if (afterWork) {
            written.add(Evidence.AFTER_WORK);
        }
        return written;
    }

    private SavedDiagnosis saved(Path file) {
        try {
            return SavedDiagnosis.read(Files.readString(file));
        } catch (IOException e) {
            throw new BadInputException(
                    Kind.UNFIT, "%s cannot be read. Give a file that --save has written.".formatted(file));
        } catch (BadInputException e) {
            throw new BadInputException(e.kind(), "%s: %s".formatted(file, e.getMessage()));
        }
    }

    private void save(SavedDiagnosis diagnosis) {
        try {
            Files.writeString(save, Json.write(diagnosis));
        } catch (IOException e) {
            throw new BadInputException(
                    Kind.UNFIT, "%s cannot be written. Choose another file to save to.".formatted(save));
        }
    }
}
