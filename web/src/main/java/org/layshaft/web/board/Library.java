package org.layshaft.web.board;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.finding.Finding.Grade;
import org.layshaft.kb.json.RootText;
import org.layshaft.kb.keeping.Kept;
import org.layshaft.kb.keeping.Outcome;
import org.layshaft.kb.keeping.Place;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.FixedLayouts;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;
import org.layshaft.kb.pack.Trial;
import org.layshaft.kb.pack.TriedLayout;
import org.layshaft.kb.start.Start;
import org.layshaft.web.desk.Desk;

/**
 * What is known at this moment, and what may be added to it. Thread-safe: what is known is replaced whole, and only by
 * something that could be loaded.
 */
public final class Library {
    /** The pack that layouts go to where no other is named. */
    public static final String OWN_PACK = "own";

    private static final Logger LOG = System.getLogger(Library.class.getName());
    private static final String UNNAMED = "unnamed";

    private final List<PackSource> given;
    private final FixedLayouts fixed;
    private final Optional<Shelf> shelf;
    private volatile Known known;

    private Library(List<PackSource> given, Optional<Shelf> shelf, Known known) {
        this.given = List.copyOf(given);
        this.fixed = FixedLayouts.of(given);
        this.shelf = shelf;
        this.known = known;
    }

    private record Known(Desk desk, List<Finding> findings) {}

    /** One that nothing can be saved in, over a desk that stands already and the packs on the class path. */
    public static Library fixed(Desk desk) {
        return new Library(PackSource.onClassPath(), Optional.empty(), new Known(desk, List.of()));
    }

    /**
     * One that has read its packs.
     *
     * @param given packs that are only read, those on the class path among them
     * @param shelf where layouts are saved, whose packs are read after the others; empty for nowhere
     */
    public static Library over(List<PackSource> given, Optional<Shelf> shelf) {
        Reading reading = PackReader.read(all(given, shelf));
        return new Library(given, shelf, new Known(Desk.over(reading.knowledge()), reading.findings()));
    }

    public Desk desk() {
        return known.desk();
    }

    /** What was found wrong or doubtful in the packs. */
    public List<Finding> findings() {
        return known.findings();
    }

    public Optional<Shelf> shelf() {
        return shelf;
    }

    /** What a text comes to in a pack. Nothing is loaded or saved, and nothing but layouts is read: it is asked often. */
    public Look look(String pack, String text) {
        TriedLayout tried = tried(new Place(pack, fileName(text), false), text);
        List<String> texts = Stream.concat(
                        Stream.of(text),
                        shelf.stream()
                                .flatMap(each -> each.all().stream().flatMap(place -> each.read(place).stream()))
                                .map(Kept::text))
                .toList();
        List<PackSource> sources = new ArrayList<>(fixed.mentionedIn(texts));
        around(tried).forEach(source -> sources.add(source.layoutsAlone()));
        return look(text, PackReader.tryOut(sources, tried.file(folder())));
    }

    /** The same held against everything that is read when it is loaded. */
    private Look lookAtAll(Place place, String text) {
        TriedLayout tried = tried(place, text);
        List<PackSource> sources = new ArrayList<>(given);
        sources.addAll(around(tried));
        return look(text, PackReader.tryOut(sources, tried.file(folder())));
    }

    private Look look(String text, Trial trial) {
        Known now = known;
        Optional<Box> box = Optional.empty();
        Optional<String> unsolved = Optional.empty();
        try {
            box = trial.layout().map(layout -> box(now, layout));
        } catch (UnanswerableException e) {
            unsolved = Optional.of(e.getMessage());
        } catch (RuntimeException e) {
            // whatever we did not foresee of a layout that nobody had before, the text must not be lost by it
            LOG.log(Level.ERROR, "A layout on the drawing board could not be solved", e);
            unsolved = Optional.of("That is a fault of ours; its trace stands where Layshaft was started.");
        }
        return new Look(text, trial.own(), brokenElsewhere(trial, now), box, unsolved);
    }

    /** Somebody may have changed files by hand since they were read, so what seems new is looked for once more. */
    private List<Finding> brokenElsewhere(Trial trial, Known now) {
        List<Finding> seemsNew = trial.brokenElsewhere(now.findings());
        return seemsNew.isEmpty()
                ? seemsNew
                : trial.brokenElsewhere(PackReader.read(all(given, shelf)).findings());
    }

    /** By a reasoner of its own: that of the desk would remember what is only tried. */
    private static Box box(Known now, Layout layout) {
        return Reasoners.standard(now.desk().knowledge()).box(layout);
    }

    /**
     * Saves a text as a layout, which is known from then on, or as a draft, which is not. Throws
     * {@link org.layshaft.kb.keeping.ShelfException}, and {@link IllegalStateException} where there is no shelf.
     *
     * @param startedFrom version of what one started from; empty where nothing was to be there
     */
    public synchronized Saved save(Place place, String text, Optional<String> startedFrom) {
        Shelf to = shelf.orElseThrow();
        if (!place.draft()) {
            Look look = lookAtAll(place, text);
            if (!look.isSound()) {
                return new Saved.Broken(look);
            }
        }
        Outcome outcome = to.save(place, text, startedFrom);
        if (outcome instanceof Outcome.Overtaken overtaken) {
            return new Saved.Overtaken(place, overtaken.theirs());
        }
        Outcome.Written written = (Outcome.Written) outcome;
        return new Saved.Done(written.kept(), written.created(), place.draft() ? List.of() : loaded(place));
    }

    /**
     * Reads all packs anew. Where the pack of a place is broken, by some other file of it, everything that was known stays.
     *
     * @return what is broken then
     */
    private List<Finding> loaded(Place place) {
        Reading reading = PackReader.read(all(given, shelf));
        if (reading.knowledge().layout(place.layout()).isEmpty()) {
            known = new Known(known.desk(), reading.findings());
            return reading.findings().stream()
                    .filter(finding -> finding.grade() == Grade.BROKEN)
                    .toList();
        }
        known = new Known(Desk.over(reading.knowledge()), reading.findings());
        return List.of();
    }

    /** The text of a layout that is loaded, to be copied. */
    public Optional<String> textOf(String layout) {
        return fixed.text(layout)
                .or(() -> kept(layout).filter(kept -> !kept.place().draft()).map(Kept::text));
    }

    /** A copy of a layout that is loaded, with an id that is free. */
    public Optional<String> copyOf(String layout) {
        return textOf(layout).map(text -> RootText.with(text, "id", free("own-" + layout)));
    }

    /** A layout to start from, with an id that is free. */
    public String begun(Start start) {
        return RootText.with(start.text(), "id", free(start.id()));
    }

    /** The id itself where no layout has it, else one like it. */
    public String free(String id) {
        return Ids.free(id, this::isTaken);
    }

    /** What is kept under this id, the layout before the draft, in whatever pack. */
    public Optional<Kept> kept(String layout) {
        return shelf.flatMap(each -> each.all().stream()
                .filter(place -> place.layout().equals(layout))
                .findFirst()
                .flatMap(each::read));
    }

    /** The id that a text gives its layout. */
    public static Optional<String> idIn(String text) {
        return Ids.of(text);
    }

    private boolean isTaken(String id) {
        return desk().knowledge().layout(id).isPresent() || kept(id).isPresent();
    }

    private static TriedLayout tried(Place place, String text) {
        return new TriedLayout(place.pack(), place.layout(), text, Shelf.manifest(place.pack()));
    }

    /** The packs on the shelf, with this in its pack. */
    private List<PackSource> around(TriedLayout tried) {
        return shelf.map(each -> PackSource.packsIn(each.folder(), tried))
                .orElseGet(() -> List.of(PackSource.of(tried)));
    }

    private Path folder() {
        return shelf.map(Shelf::folder).orElse(Path.of(""));
    }

    /** A name for the file that it has in the trial, whatever is typed for an id. */
    private static String fileName(String text) {
        return Ids.of(text).filter(Place::isName).orElse(UNNAMED);
    }

    private static List<PackSource> all(List<PackSource> given, Optional<Shelf> shelf) {
        List<PackSource> all = new ArrayList<>(given);
        shelf.ifPresent(each -> all.addAll(PackSource.packsIn(each.folder())));
        return all;
    }
}
