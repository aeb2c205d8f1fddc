package org.layshaft.web.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command itself, with what all its subcommands share. */
@Command(
        name = "layshaft",
        description = "Says which gears of a manual gearbox still work, what you notice, and why.",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            ServeCommand.class,
            LayoutsCommand.class,
            CheckCommand.class,
            NewCommand.class,
            GearsCommand.class,
            AskCommand.class,
            FaultsCommand.class,
            SuspectsCommand.class,
            FitCommand.class,
            CrossCommand.class,
            SwapCommand.class,
            WishCommand.class,
            IdentifyCommand.class,
            RoadCommand.class,
            SoundCommand.class,
            WordsCommand.class
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft serve",
            "  layshaft gears curlew --fault \"3-4-fork bent\"",
            "  layshaft ask --layout curlew \"which gears still work if the 3-4 fork is bent\"",
            "",
            "Exit status: 0 answered, 2 something given cannot be used, 3 our fault."
        })
public final class Layshaft implements Runnable {
    static final int BAD_INPUT = 2;
    static final int OUR_FAULT = 3;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--packs",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "A folder with packs to load besides the built-in ones. May be given more than once.")
    private List<Path> packs = new ArrayList<>();

    @Option(
            names = "--verbose",
            scope = ScopeType.INHERIT,
            description = "Show the whole trace when something goes wrong on our side.")
    private boolean verbose;

    /**
     * Runs one command line.
     *
     * @return the exit status
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        Layshaft layshaft = new Layshaft();
        return new CommandLine(layshaft)
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler(Refusals::ofParameters)
                .setExecutionExceptionHandler(
                        (problem, command, parsed) -> Refusals.ofExecution(problem, command, layshaft.verbose))
                .execute(args);
    }

    List<Path> packs() {
        return packs;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: one of the commands below.");
    }
}
