package org.layshaft.web.cli;

import java.util.stream.Collectors;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.http.PageServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Serves the page and its API until it is stopped. */
@Command(
        name = "serve",
        description = "Serve the page and its API to this machine until stopped.",
        footerHeading = "%nExample:%n",
        footer = "  layshaft serve --port 7412 --packs my-packs")
final class ServeCommand extends Subcommand {
    @Option(
            names = "--port",
            defaultValue = "7411",
            description = "The port to serve at; 0 takes a free one. Otherwise ${DEFAULT-VALUE}.")
    private int port;

    @Override
    public Integer call() throws InterruptedException {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        try (PageServer server = PageServer.start(port, Desk.over(knowledge))) {
            String names =
                    knowledge.layouts().values().stream().map(Layout::name).collect(Collectors.joining(", "));
            write("Layshaft is ready at %s%nLayouts: %s. Stop it with Ctrl-C.%n".formatted(server.address(), names));
            server.join();
        }
        return 0;
    }
}
