package org.layshaft.web.page;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.RootText;
import org.layshaft.kb.keeping.Kept;
import org.layshaft.kb.keeping.Place;
import org.layshaft.kb.keeping.ShelfException;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.start.Start;
import org.layshaft.kb.start.Starts;
import org.layshaft.web.board.Library;
import org.layshaft.web.board.Look;
import org.layshaft.web.board.Saved;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.LayoutFinder;

/** The page on which layouts of one's own are made. Thread-safe. */
public final class BoardPage {
    private static final String NO_FOLDER =
            "Nothing can be saved here: Layshaft was started without a folder to save in. Start it with serve --write"
                    + " and a folder, or download the text.";

    private static final String EARLIER = "This is an earlier version. Save it, and it is put back in its place.";

    private final Library library;
    private final Templates templates;
    private final BoardViews views;

    BoardPage(Library library, Templates templates) {
        this.library = library;
        this.templates = templates;
        this.views = new BoardViews(library);
    }

    /** What there is to start from. */
    public BoardReply chooser() {
        return reply(200, views.chooser(List.of()));
    }

    /** A copy of a layout that is loaded. Throws {@link BadInputException} where there is none of this id. */
    public BoardReply copy(String layout, Optional<String> gear) {
        Layout copied = LayoutFinder.find(library.desk().knowledge(), layout);
        String text = library.copyOf(copied.id())
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN, "The file of the layout \"%s\" is no longer there.".formatted(copied.id())));
        return opened(fresh(text, gear), "This is a copy of %s, under an id that is free.".formatted(copied.name()));
    }

    /** A layout to start from. Throws {@link BadInputException} where there is none of this id. */
    public BoardReply start(String id, Optional<String> gear) {
        Start start = Starts.of(id)
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "There is no layout \"%s\" to start from.".formatted(id),
                        Starts.all().stream().map(Start::id).toList()));
        return opened(fresh(library.begun(start), gear), null);
    }

    /**
     * A layout that is kept.
     *
     * @param at an earlier version of it, to be looked at and perhaps put back
     * @param done what was done just before
     */
    public BoardReply open(String written, Optional<String> at, Optional<String> gear, Optional<String> done) {
        try {
            Place place = BoardAddress.read(written)
                    .orElseThrow(() -> new BadInputException(
                            UNKNOWN, "\"%s\" is not a pack and a layout. Write own/mine.".formatted(written)));
            Optional<Kept> kept = library.shelf().flatMap(shelf -> shelf.read(place));
            Optional<String> text = at.isPresent()
                    ? library.shelf().flatMap(shelf -> shelf.earlier(place.layout(), at.get()))
                    : kept.map(Kept::text);
            if (text.isEmpty()) {
                throw new BadInputException(UNKNOWN, "\"%s\" is not kept here.".formatted(written));
            }
            BoardForm form = new BoardForm(
                    text.get(),
                    place.pack(),
                    Optional.of(BoardAddress.written(place)),
                    kept.map(Kept::version),
                    gear,
                    Optional.empty());
            return opened(
                    form,
                    at.isPresent() ? EARLIER : done.map(BoardPage::saidDone).orElse(null));
        } catch (ShelfException e) {
            throw new BadInputException(UNKNOWN, e.getMessage());
        }
    }

    private static String saidDone(String done) {
        return switch (done) {
            case "draft" -> "Saved as a draft. It is not loaded.";
            case "unloaded" ->
                "Saved. It is not loaded yet, because other files of its pack are broken; what was known before still is.";
            case "aside" -> "This is what is there. Yours is among the earlier versions.";
            default -> "Saved. It is known on every page from now on.";
        };
    }

    /** The text as it was sent, with what is found in it. */
    public BoardReply check(BoardForm form) {
        return shown(200, form, List.of());
    }

    /** Saves a text as a layout, or as a draft. */
    public BoardReply save(BoardForm form, boolean draft) {
        return saving(form, () -> {
            Place place = place(form, draft);
            Optional<Place> opened = form.opened().flatMap(BoardAddress::read);
            return save(form, place, opened.filter(place::equals).flatMap(any -> form.version()));
        });
    }

    /** Saves a text over what is there, having seen that. */
    public BoardReply saveOver(BoardForm form) {
        return saving(form, () -> {
            Place place = whatIsThere(form);
            return save(form, place, form.version());
        });
    }

    /** Saves a text under another id. */
    public BoardReply saveCopy(BoardForm form) {
        return saving(form, () -> {
            boolean draft = form.opened()
                    .flatMap(BoardAddress::read)
                    .filter(Place::draft)
                    .isPresent();
            BoardForm copy = form.with(
                    RootText.with(form.text(), "id", form.copyId().orElse("")), Optional.empty(), Optional.empty());
            return save(copy, place(copy, draft), Optional.empty());
        });
    }

    /** Gives way to what is there; the text is put with the earlier versions. */
    public BoardReply giveWay(BoardForm form) {
        return saving(form, () -> {
            Place place = whatIsThere(form);
            library.shelf().orElseThrow().putAside(place, form.text());
            return BoardReply.to(BoardAddress.opening(place) + "&done=aside");
        });
    }

    private static Place whatIsThere(BoardForm form) {
        return form.opened()
                .flatMap(BoardAddress::read)
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN, "It is not said which layout is meant. Open it on the drawing board once more."));
    }

    private interface Saving {
        BoardReply done();
    }

    /** Whatever keeps it from being saved, the text comes back. */
    private BoardReply saving(BoardForm form, Saving saving) {
        if (library.shelf().isEmpty()) {
            return shown(403, form, List.of(NO_FOLDER));
        }
        try {
            return saving.done();
        } catch (ShelfException e) {
            return shown(e.kind() == ShelfException.Kind.DISK ? 507 : 422, form, List.of(e.getMessage()));
        } catch (BadInputException e) {
            return shown(422, form, List.of(e.getMessage()));
        }
    }

    private BoardReply save(BoardForm form, Place place, Optional<String> startedFrom) {
        Saved saved = library.save(place, form.text(), startedFrom);
        if (saved instanceof Saved.Overtaken overtaken) {
            return reply(409, views.conflict(form, place, overtaken.theirs()));
        }
        if (saved instanceof Saved.Broken broken) {
            return reply(
                    422,
                    views.editing(
                            form,
                            broken.look(),
                            null,
                            List.of("Not saved, because something is broken. It can be saved as a draft.")));
        }
        Saved.Done done = (Saved.Done) saved;
        dropDraft(form, place);
        String said = place.draft() ? "draft" : done.unloaded().isEmpty() ? "saved" : "unloaded";
        return BoardReply.to(BoardAddress.opening(place) + "&done=" + said);
    }

    /** The draft that has become a layout. */
    private void dropDraft(BoardForm form, Place place) {
        Optional<Place> draft =
                form.opened().flatMap(BoardAddress::read).filter(opened -> opened.equals(place.asDraft()));
        if (!place.draft() && draft.isPresent() && form.version().isPresent()) {
            library.shelf()
                    .ifPresent(shelf -> shelf.dropDraft(place, form.version().get()));
        }
    }

    private static Place place(BoardForm form, boolean draft) {
        String id = Library.idIn(form.text())
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN, "The text has no id, and is saved by that. Give it one: \"id\": \"mine\"."));
        return new Place(form.pack(), id, draft);
    }

    private BoardForm fresh(String text, Optional<String> gear) {
        return new BoardForm(text, Library.OWN_PACK, Optional.empty(), Optional.empty(), gear, Optional.empty());
    }

    private BoardReply opened(BoardForm form, String notice) {
        return reply(200, views.editing(form, library.look(form.pack(), form.text()), notice, List.of()));
    }

    private BoardReply shown(int status, BoardForm form, List<String> trouble) {
        boolean named = Place.isName(form.pack());
        Look look = library.look(named ? form.pack() : Library.OWN_PACK, form.text());
        return reply(status, views.editing(form, look, null, trouble));
    }

    private BoardReply reply(int status, BoardView view) {
        return BoardReply.page(status, templates.fill("board", view));
    }

    /** The drawing of what was looked at, in this gear. */
    public static Optional<String> drawing(Look look, Optional<String> gear) {
        return BoardViews.drawing(look, look.gear(gear));
    }

    /** Whether what was looked at can be saved, in words. */
    public static String verdict(Look look) {
        return BoardViews.verdict(look);
    }
}
