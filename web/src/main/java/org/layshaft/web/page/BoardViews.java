package org.layshaft.web.page;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.keeping.Earlier;
import org.layshaft.kb.keeping.Kept;
import org.layshaft.kb.keeping.Place;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.start.Starts;
import org.layshaft.web.board.Library;
import org.layshaft.web.board.LineDiff;
import org.layshaft.web.board.LineDiff.In;
import org.layshaft.web.board.Look;
import org.layshaft.web.drawing.Drawing;
import org.layshaft.web.drawing.View;
import org.layshaft.web.page.BoardEditorView.GearView;
import org.layshaft.web.page.BoardEditorView.LineView;

/** Decides what the drawing board shows. Thread-safe. */
final class BoardViews {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss").withZone(ZoneId.systemDefault());

    private static final Logger LOG = System.getLogger(BoardViews.class.getName());

    private final Library library;

    BoardViews(Library library) {
        this.library = library;
    }

    BoardView chooser(List<String> trouble) {
        return view("Drawing board", null, trouble, null, null);
    }

    BoardView editing(BoardForm form, Look look, String notice, List<String> trouble) {
        String title = look.box()
                .map(box -> box.layout().name())
                .or(() -> Library.idIn(form.text()))
                .orElse("A text");
        return view(title + " on the drawing board", notice, trouble, null, editor(form, look));
    }

    BoardView conflict(BoardForm form, Place place, Optional<Kept> theirs) {
        List<BoardConflictView.LineView> lines =
                LineDiff.between(theirs.map(Kept::text).orElse(""), form.text()).stream()
                        .map(BoardViews::line)
                        .toList();
        return view(
                "Two versions of " + place.layout(),
                null,
                List.of(),
                new BoardConflictView(
                        place.layout(),
                        form.text(),
                        form.pack(),
                        BoardAddress.written(place),
                        theirs.map(Kept::version).orElse(""),
                        library.free(place.layout()),
                        theirs.isEmpty(),
                        place.draft(),
                        lines),
                null);
    }

    private BoardView view(
            String title, String notice, List<String> trouble, BoardConflictView conflict, BoardEditorView editor) {
        List<LinkView> kept = library.shelf().map(Shelf::all).orElse(List.of()).stream()
                .map(place -> new LinkView(
                        "%s, in %s%s".formatted(place.layout(), place.pack(), place.draft() ? ", a draft" : ""),
                        BoardAddress.opening(place),
                        false))
                .toList();
        return new BoardView(
                title,
                library.shelf().map(shelf -> shelf.folder().toString()).orElse(null),
                notice,
                trouble,
                conflict,
                editor,
                Starts.all().stream()
                        .map(start -> new BoardView.StartView(
                                start.id(), start.says(), BoardAddress.PATH + "?start=" + start.id()))
                        .toList(),
                library.desk().knowledge().layouts().values().stream()
                        .map(layout -> new LinkView(layout.name(), BoardAddress.PATH + "?from=" + layout.id(), false))
                        .toList(),
                kept);
    }

    private BoardEditorView editor(BoardForm form, Look look) {
        Optional<Box.DerivedGear> gear = look.gear(form.gear());
        Optional<Place> opened = form.opened().flatMap(BoardAddress::read);
        return new BoardEditorView(
                form.text(),
                form.pack(),
                form.opened().orElse(""),
                form.version().orElse(""),
                where(opened),
                verdict(look),
                look.isSound(),
                look.findings().stream().map(BoardFindingView::here).toList(),
                lines(look),
                look.elsewhere().stream().map(BoardFindingView::elsewhere).toList(),
                look.box().map(box -> gears(box, gear)).orElse(List.of()),
                look.box().stream()
                        .flatMap(box -> box.differences().stream())
                        .map(Box.Difference::says)
                        .toList(),
                drawing(look, gear).orElse(null),
                drawn(look, gear),
                opened.map(this::earlier).orElse(List.of()));
    }

    /** The box in this gear, at rest where it has none; empty where there is no box, or none that can be drawn. */
    static Optional<String> drawing(Look look, Optional<Box.DerivedGear> gear) {
        try {
            return look.box().map(box -> Drawing.of(box.layout(), view(gear)).svg());
        } catch (RuntimeException e) {
            // whatever we did not foresee of a layout that nobody drew before, the text must not be lost by it
            LOG.log(Level.ERROR, "A layout on the drawing board could not be drawn", e);
            return Optional.empty();
        }
    }

    private static View view(Optional<Box.DerivedGear> gear) {
        return gear.map(each -> new View(
                        each.stance(),
                        Optional.of(each.motion()),
                        Set.of(),
                        Set.of(),
                        part -> Optional.empty(),
                        "box-"))
                .orElse(View.plain());
    }

    private static String drawn(Look look, Optional<Box.DerivedGear> gear) {
        String name = look.box().map(Box::layout).map(Layout::name).orElse("");
        return gear.map(each -> name + " in " + Names.gearName(each.name())).orElse(name);
    }

    private static String where(Optional<Place> opened) {
        return opened.map(place -> "%s \"%s\" of the pack \"%s\""
                        .formatted(place.draft() ? "Draft" : "Layout", place.layout(), place.pack()))
                .orElse("Not saved yet");
    }

    /** Whether it can be saved, and how much was found. */
    static String verdict(Look look) {
        if (look.unsolved().isPresent()) {
            return "It can be read, and not be solved: " + look.unsolved().get();
        }
        int broken = look.broken().size();
        int doubtful = look.findings().size() + look.elsewhere().size() - broken;
        String doubts = doubtful == 0
                ? ""
                : doubtful == 1 ? " 1 thing is doubtful." : " %d things are doubtful.".formatted(doubtful);
        if (broken == 0) {
            return "Sound: it can be loaded." + doubts;
        }
        return (broken == 1 ? "1 thing is broken:" : "%d things are broken:".formatted(broken))
                + " it would not be loaded." + doubts;
    }

    private static List<LineView> lines(Look look) {
        Map<Integer, List<BoardFindingView>> found = look.findings().stream()
                .collect(Collectors.groupingBy(
                        Finding::line, Collectors.mapping(BoardFindingView::here, Collectors.toList())));
        List<LineView> lines = new ArrayList<>();
        for (String text : look.text().split("\n", -1)) {
            int number = lines.size() + 1;
            lines.add(new LineView(number, text, found.getOrDefault(number, List.of())));
        }
        return lines;
    }

    private static List<GearView> gears(Box box, Optional<Box.DerivedGear> drawn) {
        return box.gears().stream()
                .map(gear -> new GearView(
                        gear.name(),
                        gear.direction().word(),
                        NumberView.of(gear.ratio()),
                        Optional.ofNullable(box.layout().printedRatios().get(gear.name()))
                                .map(Object::toString)
                                .orElse(null),
                        drawn.filter(gear::equals).isPresent()))
                .toList();
    }

    private List<LinkView> earlier(Place place) {
        return library.shelf().map(shelf -> shelf.earlier(place.layout())).orElse(List.of()).stream()
                .map(each -> new LinkView(said(each), BoardAddress.opening(place, each.version()), false))
                .toList();
    }

    private static String said(Earlier earlier) {
        return "%s, version %s"
                .formatted(WHEN.format(earlier.replaced()), earlier.version().substring(0, 8));
    }

    private static BoardConflictView.LineView line(LineDiff.Line line) {
        boolean mine = line.in() == In.SECOND;
        boolean theirs = line.in() == In.FIRST;
        return new BoardConflictView.LineView(
                mine ? "+" : theirs ? "−" : " ",
                mine ? "only yours: " : theirs ? "only theirs: " : "",
                mine,
                theirs,
                line.text());
    }
}
