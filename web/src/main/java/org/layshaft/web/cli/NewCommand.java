package org.layshaft.web.cli;

import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.RootText;
import org.layshaft.kb.keeping.Place;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.keeping.ShelfException;
import org.layshaft.kb.start.Start;
import org.layshaft.kb.start.Starts;
import org.layshaft.web.board.Library;
import org.layshaft.web.board.Saved;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.LayoutFinder;
import org.layshaft.web.json.SavedLayoutJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Puts a layout to start from into a pack of one's own. */
@Command(
        name = "new",
        description = {
            "Put a copy of a layout into a pack of your own, to be changed there.",
            "It is one that is loaded, or one to start from."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft new --from curlew --id mine --into my-packs",
            "  layshaft new --from tattler --id mine --into my-packs --pack estuary"
        })
final class NewCommand extends Subcommand {
    @Option(names = "--from", required = true, paramLabel = "ID", description = "The layout to copy.")
    private String from;

    @Option(names = "--id", required = true, paramLabel = "ID", description = "The id of the copy.")
    private String id;

    @Option(
            names = "--into",
            required = true,
            paramLabel = "DIR",
            description = "A folder of packs; made where missing.")
    private Path into;

    @Option(
            names = "--pack",
            paramLabel = "ID",
            defaultValue = Library.OWN_PACK,
            description = "The pack in it; made where missing. Otherwise ${DEFAULT-VALUE}.")
    private String pack;

    @Override
    public Integer call() {
        Library library = libraryToReasonWith(Optional.of(into));
        try {
            Place place = new Place(pack, id, false);
            Saved saved = library.save(place, RootText.with(text(library), "id", id), Optional.empty());
            if (saved instanceof Saved.Done done) {
                tell(done, library.shelf().orElseThrow());
                return 0;
            }
            throw new BadInputException(UNFIT, refusal(saved));
        } catch (ShelfException e) {
            throw new BadInputException(UNFIT, e.getMessage());
        }
    }

    private String text(Library library) {
        return Starts.of(from)
                .filter(start -> library.desk().knowledge().layout(from).isEmpty())
                .map(Start::text)
                .or(() -> library.textOf(
                        LayoutFinder.find(library.desk().knowledge(), from).id()))
                .orElseThrow();
    }

    private void tell(Saved.Done done, Shelf shelf) {
        if (wantsJson()) {
            write(SavedLayoutJson.of(done));
        } else {
            write("%s is in %s. Change it there, or on the page: serve --write %s%n"
                    .formatted(id, shelf.folder().resolve(pack).resolve("layouts"), into));
        }
    }

    private String refusal(Saved saved) {
        if (saved instanceof Saved.Broken broken) {
            List<String> found =
                    broken.look().broken().stream().map(FindingText::of).toList();
            return "It would not be loaded:\n" + String.join("\n", found);
        }
        return "There is a layout \"%s\" in the pack \"%s\" already. Choose another id.".formatted(id, pack);
    }
}
