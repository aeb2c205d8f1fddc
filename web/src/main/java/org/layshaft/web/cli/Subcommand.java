package org.layshaft.web.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.layshaft.engine.Reasoners;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.board.Library;
import org.layshaft.web.json.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** What every subcommand has: the packs, and the choice between text and JSON. */
@Command(mixinStandardHelpOptions = true, versionProvider = Version.class)
abstract class Subcommand implements Callable<Integer> {
    @ParentCommand
    private Layshaft layshaft;

    @Spec
    private CommandSpec spec;

    @Option(names = "--json", description = "Answer in JSON.")
    private boolean json;

    /** What the packs hold. What is wrong with them goes to the error stream, and is left out. */
    final KnowledgeBase knowledge() {
        return Packs.load(layshaft.packs(), err());
    }

    /** The same, for a command that will reason with it: the rules are loaded meanwhile. */
    final KnowledgeBase knowledgeToReasonWith() {
        Reasoners.beginLoading();
        return knowledge();
    }

    /** The same, with a folder in which layouts can be saved. */
    final Library libraryToReasonWith(Optional<Path> folder) {
        Reasoners.beginLoading();
        return Packs.library(layshaft.packs(), folder, err());
    }

    final boolean wantsJson() {
        return json;
    }

    final void write(Object record) {
        out().print(Json.write(record));
        out().flush();
    }

    final void write(String text) {
        out().print(text);
        out().flush();
    }

    final PrintWriter err() {
        return spec.commandLine().getErr();
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
