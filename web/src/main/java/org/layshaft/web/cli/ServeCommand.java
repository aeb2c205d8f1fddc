package org.layshaft.web.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.board.Library;
import org.layshaft.web.http.PageServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Serves the page and its API until it is stopped. */
@Command(
        name = "serve",
        description = "Serve the page and its API to this machine until stopped.",
        footerHeading = "%nExamples:%n",
        footer = {"  layshaft serve --port 7412 --packs my-packs", "  layshaft serve --write my-packs"})
final class ServeCommand extends Subcommand {
    @Option(
            names = "--port",
            defaultValue = "7411",
            description = "The port to serve at; 0 takes a free one. Otherwise ${DEFAULT-VALUE}.")
    private int port;

    @Option(
            names = "--write",
            paramLabel = "DIR",
            description =
                    "The folder of packs that layouts may be saved in from the page; made where it is missing, and"
                            + " loaded. Without it nothing is ever written.")
    private Path folder;

    @Override
    public Integer call() throws InterruptedException {
        Library library = libraryToReasonWith(Optional.ofNullable(folder));
        try (PageServer server = PageServer.start(port, library)) {
            String names = library.desk().knowledge().layouts().values().stream()
                    .map(Layout::name)
                    .collect(Collectors.joining(", "));
            write("Layshaft is ready at %s%nLayouts: %s. Stop it with Ctrl-C.%n".formatted(server.address(), names));
            library.shelf().ifPresent(shelf -> write("Layouts are saved in %s.%n".formatted(shelf.folder())));
            server.join();
        }
        return 0;
    }
}
