package org.layshaft.web.cli;

import java.io.PrintWriter;
import java.util.List;
import org.layshaft.web.desk.BadInputException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns what went wrong into a message and an exit status. */
final class Refusals {
    private Refusals() {}

    /** For a command line that cannot be read. */
    static int ofParameters(ParameterException problem, String[] args) {
        CommandLine command = problem.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(problem.getMessage());
        UnmatchedArgumentException.printSuggestions(problem, err);
        err.println("See: %s --help".formatted(command.getCommandSpec().qualifiedName()));
        return Layshaft.BAD_INPUT;
    }

    /** For a command that could not be carried out. */
    static int ofExecution(Exception problem, CommandLine command, boolean verbose) {
        PrintWriter err = command.getErr();
        if (problem instanceof BadInputException bad) {
            err.println(bad.getMessage());
            suggest(bad.suggestions(), err);
            return Layshaft.BAD_INPUT;
        }
        err.println("Something went wrong on our side (%s). %s"
                .formatted(
                        problem.getClass().getSimpleName(),
                        verbose ? "Its trace:" : "Run the same again with --verbose to see the whole trace."));
        if (verbose) {
            problem.printStackTrace(err);
        }
        return Layshaft.OUR_FAULT;
    }

    private static void suggest(List<String> suggestions, PrintWriter err) {
        if (!suggestions.isEmpty()) {
            err.println("Perhaps:");
            suggestions.forEach(suggestion -> err.println("  " + suggestion));
        }
    }
}
