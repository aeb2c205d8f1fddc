package org.layshaft.web.http;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.kb.keeping.Kept;
import org.layshaft.kb.keeping.Place;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.keeping.ShelfException;
import org.layshaft.kb.keeping.Version;
import org.layshaft.web.board.Library;
import org.layshaft.web.board.Saved;
import org.layshaft.web.json.BrokenLayoutJson;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.ProblemJson;
import org.layshaft.web.json.ProblemKind;
import org.layshaft.web.json.SavedLayoutJson;

/**
 * Saves a layout by {@code PUT /api/layouts/<id>?pack=own}, its text being the body.
 *
 * <p>The entity tag is the SHA-256 of the text. {@code If-None-Match: *} saves where nothing is, {@code If-Match} with the
 * tag of what one started from replaces that; without either it is refused, so that nobody overwrites unknowingly.
 * 201 where it is new, 200 where it replaced another, 412 where what is there is something else (RFC 9110), 428 where no
 * condition is given (RFC 6585), 422 with the findings where it is broken, 403 where nothing may be saved, 507 where the
 * disk does not take it.
 */
final class SavingEndpoint {
    private static final Pattern TAG = Pattern.compile("\"([0-9a-f]{64})\"");
    private static final String ANY = "*";

    private final Library library;

    SavingEndpoint(Library library) {
        this.library = library;
    }

    static String tag(String text) {
        return '"' + Version.of(text) + '"';
    }

    Reply save(Call call) {
        Optional<Shelf> shelf = library.shelf();
        if (shelf.isEmpty()) {
            return problem(
                    ProblemKind.NOT_ALLOWED,
                    "Nothing can be saved: Layshaft was started without a folder to save in. Start it with serve --write"
                            + " and a folder.");
        }
        String id = call.rest();
        Optional<String> written = Library.idIn(call.body());
        if (written.isEmpty()) {
            return problem(
                    ProblemKind.UNFIT,
                    "No id can be read in the text that is sent. Look whether it is whole, and begins with a brace and an id:"
                            + " { \"id\": \"%s\".".formatted(id));
        }
        if (!written.get().equals(id)) {
            return problem(
                    ProblemKind.UNFIT,
                    "The text has the id \"%s\", and is sent to \"%s\". Let both be the same."
                            .formatted(written.get(), id));
        }
        try {
            return save(new Place(pack(call), id, false), call, shelf.get());
        } catch (ShelfException e) {
            return e.kind() == ShelfException.Kind.DISK
                    ? problem(ProblemKind.NOT_SAVED, e.getMessage())
                    : problem(ProblemKind.UNFIT, e.getMessage());
        }
    }

    private Reply save(Place place, Call call, Shelf shelf) {
        String match = call.conditions().getOrDefault("If-Match", "");
        boolean isNew = call.conditions().getOrDefault("If-None-Match", "").equals(ANY);
        if (match.isEmpty() && !isNew) {
            return problem(
                    ProblemKind.UNCONDITIONED,
                    "Say what this replaces: If-Match with the tag that GET %s/text gives, or If-None-Match: * where nothing"
                                    .formatted(call.path())
                            + " is to be there yet.");
        }
        Optional<Kept> there = shelf.read(place);
        Optional<String> startedFrom = startedFrom(match, there);
        if (!match.isEmpty() && startedFrom.isEmpty() || isNew && there.isPresent()) {
            return overtaken(there);
        }
        Saved saved = library.save(place, call.body(), startedFrom);
        if (saved instanceof Saved.Overtaken overtaken) {
            return overtaken(overtaken.theirs());
        }
        if (saved instanceof Saved.Broken broken) {
            return Reply.of(422, Reply.PROBLEM, Json.write(BrokenLayoutJson.of(broken.look())));
        }
        Saved.Done done = (Saved.Done) saved;
        Reply reply = Reply.of(done.created() ? 201 : 200, Reply.JSON, Json.write(SavedLayoutJson.of(done)))
                .with("ETag", tag(done.kept().text()));
        return done.created() ? reply.with("Location", "/api/layouts/" + place.layout()) : reply;
    }

    /** The version that was named; of a star, what is there. */
    private static Optional<String> startedFrom(String match, Optional<Kept> there) {
        if (match.equals(ANY)) {
            return there.map(Kept::version);
        }
        Matcher tag = TAG.matcher(match);
        return tag.matches() ? Optional.of(tag.group(1)) : Optional.empty();
    }

    private static Reply overtaken(Optional<Kept> theirs) {
        Reply reply = problem(
                ProblemKind.OVERTAKEN,
                theirs.map(kept -> "What is there has the version %s, and is not what this was to replace. Look at it"
                                        .formatted(kept.version())
                                + " first.")
                        .orElse("There is nothing there that this could replace."));
        return theirs.map(kept -> reply.with("ETag", tag(kept.text()))).orElse(reply);
    }

    private String pack(Call call) {
        return call.first("pack")
                .or(() -> library.kept(call.rest()).map(kept -> kept.place().pack()))
                .orElse(Library.OWN_PACK);
    }

    private static Reply problem(ProblemKind kind, String detail) {
        return Reply.of(kind.status(), Reply.PROBLEM, Json.write(ProblemJson.of(kind, detail, List.of())));
    }
}
