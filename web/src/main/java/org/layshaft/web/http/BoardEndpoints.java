package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.keeping.Place;
import org.layshaft.web.board.Library;
import org.layshaft.web.board.Look;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.LookAsked;
import org.layshaft.web.json.LookJson;
import org.layshaft.web.page.BoardForm;
import org.layshaft.web.page.BoardPage;
import org.layshaft.web.page.BoardReply;

/** The drawing board. */
final class BoardEndpoints {
    /** A text of the largest size, percent-encoded, with the other fields of its form. */
    static final int MOST_FORM_BYTES = 3 * DocumentReader.LARGEST_BYTES + 4_096;

    /** A text of the largest size as JSON, quoted. */
    static final int MOST_JSON_BYTES = 2 * DocumentReader.LARGEST_BYTES;

    private static final String WITH_ITS_ORIGIN = "same-origin";

    private final Library library;
    private final BoardPage page;

    BoardEndpoints(Library library, BoardPage page) {
        this.library = library;
        this.page = page;
    }

    Reply page(Call call) {
        Optional<String> gear = call.first("gear");
        if (call.first("open").isPresent()) {
            return reply(page.open(call.first("open").get(), call.first("at"), gear, call.first("done")));
        }
        if (call.first("from").isPresent()) {
            return reply(page.copy(call.first("from").get(), gear));
        }
        return reply(call.first("start").map(id -> page.start(id, gear)).orElseGet(page::chooser));
    }

    Reply sent(Call call) {
        BoardForm form = new BoardForm(
                call.first("text").orElse(""),
                call.first("pack").orElse(Library.OWN_PACK),
                call.first("opened"),
                call.first("version"),
                call.first("gear"),
                call.first("as"));
        return switch (call.first("do").orElse("check")) {
            case "check" -> reply(page.check(form));
            case "save" -> reply(page.save(form, false));
            case "draft" -> reply(page.save(form, true));
            case "over" -> reply(page.saveOver(form));
            case "copy" -> reply(page.saveCopy(form));
            case "give-way" -> reply(page.giveWay(form));
            case "download" -> download(form);
            default ->
                throw new BadInputException(
                        MALFORMED,
                        "Nothing is done that is called \"%s\"."
                                .formatted(call.first("do").orElse("")),
                        List.of("check", "save", "draft", "download"));
        };
    }

    private static Reply download(BoardForm form) {
        String name = Library.idIn(form.text()).filter(Place::isName).orElse("layout");
        return Reply.of(200, Reply.TEXT, form.text())
                .with("Content-Disposition", "attachment; filename=\"%s.json\"".formatted(name));
    }

    /** What a text comes to; nothing of it is loaded. */
    Reply look(Call call) {
        LookAsked asked = LookAsked.read(call.body());
        Look look = library.look(asked.pack().filter(Place::isName).orElse(Library.OWN_PACK), asked.text());
        return Reply.of(
                200,
                Reply.JSON,
                Json.write(LookJson.of(
                        look, asked.gear(), BoardPage.verdict(look), BoardPage.drawing(look, asked.gear()))));
    }

    /** The text of a layout as typed, with its version as entity tag. */
    Reply text(Call call) {
        String text = library.textOf(call.rest())
                .orElseThrow(
                        () -> new BadInputException(UNKNOWN, "No layout has the id \"%s\".".formatted(call.rest())));
        return Reply.of(200, Reply.TEXT, text).with("ETag", SavingEndpoint.tag(text));
    }

    /** Where a browser keeps its origin to itself, what it sends cannot be told from what another site sends. */
    private static Reply reply(BoardReply reply) {
        return reply.movedTo()
                .map(Reply::movedTo)
                .orElseGet(() -> Reply.of(reply.status(), Reply.HTML, reply.html()))
                .with("Referrer-Policy", WITH_ITS_ORIGIN);
    }
}
