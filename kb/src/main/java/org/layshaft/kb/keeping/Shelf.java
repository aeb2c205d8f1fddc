package org.layshaft.kb.keeping;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.keeping.ShelfException.Kind;

/**
 * A folder of packs in which layouts are kept. Thread-safe, and safe beside another run of the program on the same folder.
 *
 * <p>What is replaced goes to {@code .history/<id>/<version>.json} first. Nothing is written outside of the folder, and
 * no symbolic link in it is followed. Every method throws {@link ShelfException}.
 */
public final class Shelf {
    static final String LAYOUT = ".json";
    static final String DRAFT = ".json.draft";
    private static final String LAYOUTS = "layouts";
    private static final String HISTORY = ".history";
    private static final String MANIFEST = "pack.json";

    private final Path folder;
    private final WholeFile files;
    private final FolderLock lock;

    private Shelf(Path folder, Disk disk) {
        this.folder = folder;
        this.files = new WholeFile(disk);
        this.lock = new FolderLock(folder.resolve(HISTORY).resolve("lock"));
    }

    /** The shelf in this folder, which is made where it is missing. */
    public static Shelf in(Path folder) {
        return in(folder, new Disk() {});
    }

    static Shelf in(Path folder, Disk disk) {
        try {
            Files.createDirectories(folder);
            Path real = folder.toRealPath();
            if (Files.exists(real.resolve(MANIFEST))) {
                throw new ShelfException(
                        Kind.NAME,
                        "\"%s\" is itself a pack. Name the folder that packs are to stand in.".formatted(folder));
            }
            Shelf shelf = new Shelf(real, disk);
            shelf.makeFolder(real.resolve(HISTORY));
            shelf.lock.holding(shelf::swept);
            return shelf;
        } catch (IOException problem) {
            throw Refused.writing(folder, problem);
        }
    }

    /** With no link in the way to it. */
    public Path folder() {
        return folder;
    }

    /** The manifest that a new pack is given. */
    public static String manifest(String pack) {
        return """
                {
                  "format": "layshaft/pack/1",
                  "id": "%s",
                  "version": "1.0.0",
                  "title": "Layouts of our own"
                }
                """.formatted(Names.require("pack", pack));
    }

    /** Everything that is kept here: layouts, then drafts, by pack and id. */
    public List<Place> all() {
        List<Place> places = new ArrayList<>();
        for (Path pack : inside(folder, "[a-z0-9]*")) {
            for (Path file : inside(pack.resolve(LAYOUTS), "*.{json,draft}")) {
                place(pack, file).ifPresent(places::add);
            }
        }
        places.sort(
                Comparator.comparing(Place::draft).thenComparing(Place::pack).thenComparing(Place::layout));
        return places;
    }

    public Optional<Kept> read(Place place) {
        return text(file(place)).map(text -> Kept.of(place, text));
    }

    /**
     * Puts a text in its place, unless that changed meanwhile.
     *
     * @param startedFrom version of the text that one started from; empty where nothing was to be there
     */
    public Outcome save(Place place, String text, Optional<String> startedFrom) {
        Path file = file(place);
        try {
            return lock.holding(() -> {
                Optional<Kept> there = read(place);
                if (there.filter(kept -> kept.text().equals(text)).isPresent()) {
                    return new Outcome.Written(there.get(), false);
                }
                if (!there.map(Kept::version).equals(startedFrom)) {
                    return new Outcome.Overtaken(there);
                }
                if (there.isPresent()) {
                    remember(place, there.get().text());
                }
                makeFolder(file.getParent().getParent());
                makeFolder(file.getParent());
                makeManifest(place.pack());
                files.write(file, text.getBytes(StandardCharsets.UTF_8));
                return new Outcome.Written(Kept.of(place, text), there.isEmpty());
            });
        } catch (IOException problem) {
            throw Refused.writing(file, problem);
        }
    }

    /** Puts a text that is not saved with the earlier versions, so that it can be had again. */
    public void putAside(Place place, String text) {
        try {
            lock.holding(() -> {
                remember(place, text);
                return text;
            });
        } catch (IOException problem) {
            throw Refused.writing(history(place.layout()), problem);
        }
    }

    /** Takes a draft away that has become a layout, if it is still this version. */
    public void dropDraft(Place draft, String version) {
        Path file = file(draft.asDraft());
        try {
            lock.holding(() -> {
                Optional<Kept> there =
                        read(draft.asDraft()).filter(kept -> kept.version().equals(version));
                if (there.isPresent()) {
                    remember(draft, there.get().text());
                    Files.deleteIfExists(file);
                }
                return there;
            });
        } catch (IOException problem) {
            throw Refused.writing(file, problem);
        }
    }

    /** The earlier versions of a layout, the latest first. */
    public List<Earlier> earlier(String layout) {
        List<Earlier> earlier = new ArrayList<>();
        for (Path file : inside(history(Names.require("layout", layout)), "*" + LAYOUT)) {
            String name = file.getFileName().toString();
            try {
                Instant replaced = Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS)
                        .toInstant();
                earlier.add(new Earlier(name.substring(0, name.length() - LAYOUT.length()), replaced));
            } catch (IOException gone) {
                throw Refused.reading(file, gone);
            }
        }
        earlier.sort(Comparator.comparing(Earlier::replaced).reversed());
        return earlier;
    }

    /** The text of an earlier version. */
    public Optional<String> earlier(String layout, String version) {
        return text(history(Names.require("layout", layout)).resolve(Version.require(version) + LAYOUT));
    }

    private void remember(Place place, String text) throws IOException {
        Path versions = history(place.layout());
        makeFolder(versions);
        Path file = versions.resolve(Version.of(text) + LAYOUT);
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
        } else {
            files.write(file, text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private void makeManifest(String pack) throws IOException {
        Path manifest = folder.resolve(pack).resolve(MANIFEST);
        if (!Files.exists(manifest, LinkOption.NOFOLLOW_LINKS)) {
            files.write(manifest, manifest(pack).getBytes(StandardCharsets.UTF_8));
        }
    }

    private void makeFolder(Path made) throws IOException {
        requireNoLink(made);
        if (!Files.isDirectory(made, LinkOption.NOFOLLOW_LINKS)) {
            Files.createDirectory(made);
        }
    }

    private Path file(Place place) {
        return inside(folder.resolve(place.pack()).resolve(LAYOUTS).resolve(place.fileName()));
    }

    private Path history(String layout) {
        return inside(folder.resolve(HISTORY).resolve(layout));
    }

    /** The names allow of nothing else; should that ever change, this still holds. */
    private Path inside(Path file) {
        if (!file.normalize().equals(file) || !file.startsWith(folder)) {
            throw new ShelfException(Kind.NAME, "\"%s\" is outside of the folder of packs.".formatted(file));
        }
        for (Path step = file; !step.equals(folder); step = step.getParent()) {
            requireNoLink(step);
        }
        return file;
    }

    private static void requireNoLink(Path file) {
        if (Files.isSymbolicLink(file)) {
            throw Refused.link(file);
        }
    }

    private static Optional<Place> place(Path pack, Path file) {
        String name = file.getFileName().toString();
        boolean draft = name.endsWith(DRAFT);
        String id = name.substring(0, Math.max(0, name.length() - (draft ? DRAFT : LAYOUT).length()));
        try {
            return Optional.of(new Place(pack.getFileName().toString(), id, draft));
        } catch (ShelfException notOurs) {
            return Optional.empty();
        }
    }

    private static Optional<String> text(Path file) {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            byte[] bytes = in.readNBytes(DocumentReader.LARGEST_BYTES + 1);
            if (bytes.length > DocumentReader.LARGEST_BYTES) {
                throw new ShelfException(
                        Kind.DISK,
                        "\"%s\" is larger than %,d bytes. No layout is; look what it is."
                                .formatted(file, DocumentReader.LARGEST_BYTES));
            }
            return Optional.of(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw Refused.reading(file, unreadable);
        }
    }

    private static List<Path> inside(Path folder, String pattern) {
        List<Path> found = new ArrayList<>();
        if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            try (DirectoryStream<Path> children = Files.newDirectoryStream(folder, pattern)) {
                children.forEach(found::add);
            } catch (IOException unreadable) {
                throw Refused.reading(folder, unreadable);
            }
        }
        return found;
    }

    private Shelf swept() throws IOException {
        for (Path pack : inside(folder, "[a-z0-9]*")) {
            WholeFile.sweep(pack);
            WholeFile.sweep(pack.resolve(LAYOUTS));
        }
        for (Path versions : inside(folder.resolve(HISTORY), "*")) {
            WholeFile.sweep(versions);
        }
        return this;
    }
}
