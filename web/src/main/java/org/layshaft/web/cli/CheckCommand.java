package org.layshaft.web.cli;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.Reading;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.json.FindingsJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Checks packs and single files, and says everything that is wrong with them. */
@Command(
        name = "check",
        description = "Check packs, or single layout files, and say everything that is wrong with them.",
        footerHeading = "%nExamples:%n",
        footer = {"  layshaft check my-packs/estuary", "  layshaft check my-packs/estuary/layouts/dunlin.json"})
final class CheckCommand extends Subcommand {
    @Parameters(paramLabel = "PATH", arity = "1..*", description = "A folder or jar with a pack, or a layout file.")
    private List<Path> paths;

    @Override
    public Integer call() {
        paths.forEach(CheckCommand::requireSomethingAt);
        Reading reading = PackReader.check(paths);
        boolean sound = reading.isSound();
        List<Box> boxes = boxes(reading.knowledge());
        if (wantsJson()) {
            write(FindingsJson.of(reading, boxes));
        } else {
            reading.findings().forEach(finding -> write(FindingText.of(finding) + "\n"));
            boxes.forEach(box -> write(BoxText.of(box) + "\n"));
            write(sound ? "Sound: everything can be loaded.\n" : "Broken: it would not be loaded.\n");
        }
        return sound ? 0 : Layshaft.BAD_INPUT;
    }

    /** What the layouts come to, so that a slip in typing shows in the ratios. */
    private static List<Box> boxes(KnowledgeBase knowledge) {
        Reasoner reasoner = Reasoners.standard(knowledge);
        return knowledge.layouts().values().stream().map(reasoner::box).toList();
    }

    private static void requireSomethingAt(Path path) {
        if (!Files.exists(path)) {
            throw new BadInputException(
                    UNKNOWN,
                    "There is nothing at \"%s\". Give the path of a pack or of a layout file.".formatted(path));
        }
    }
}
