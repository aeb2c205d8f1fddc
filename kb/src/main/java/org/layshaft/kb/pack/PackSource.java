package org.layshaft.kb.pack;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ProviderNotFoundException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.layshaft.kb.json.Report;

/**
 * Where a pack is read from: a folder, or a jar. Immutable; nothing is opened before {@link PackReader} reads it.
 *
 * <p>The root of a pack, where its {@code pack.json} stands, is the folder or jar itself or the folder
 * {@code layshaft-pack} in it.
 */
public final class PackSource {
    static final String ROOT_IN_JAR = "layshaft-pack";

    private final Supplier<PackFiles> opening;

    private PackSource(Supplier<PackFiles> opening) {
        this.opening = opening;
    }

    /** The pack in this folder or jar. That there is none is a finding when it is read, not an error here. */
    public static PackSource folder(Path place) {
        return new PackSource(() -> open(place));
    }

    /** Every pack on the class path: the trade's own first, the others in the order of the class path. */
    public static List<PackSource> onClassPath() {
        return ClassPathPacks.places().stream().map(PackSource::folder).toList();
    }

    /**
     * Every pack in a folder: each folder in it that looks like one, and each jar, in the order of their names. A folder
     * with a {@code pack.json} is itself the one pack.
     */
    public static List<PackSource> packsIn(Path folder) {
        if (!Files.isDirectory(folder) || Files.exists(folder.resolve(FileCollector.MANIFEST))) {
            return List.of(folder(folder));
        }
        List<Path> packs = new ArrayList<>();
        try (DirectoryStream<Path> children = Files.newDirectoryStream(folder, PackSource::looksLikeAPack)) {
            children.forEach(packs::add);
        } catch (IOException unreadable) {
            return List.of(broken(folder, "The folder cannot be listed.", "Look whether it may be read."));
        }
        return packs.stream().sorted().map(PackSource::folder).toList();
    }

    /**
     * The same with one layout as it would be in its pack. Where there is no such pack in the folder, or no folder, there
     * is one by its side that holds this alone.
     */
    public static List<PackSource> packsIn(Path folder, TriedLayout tried) {
        List<Path> packs = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> children = Files.newDirectoryStream(folder, PackSource::looksLikeAPack)) {
                children.forEach(packs::add);
            } catch (IOException unreadable) {
                return List.of(broken(folder, "The folder cannot be listed.", "Look whether it may be read."));
            }
        }
        Path its = tried.pack(folder);
        if (!packs.contains(its)) {
            packs.add(its);
        }
        return packs.stream()
                .sorted()
                .map(pack -> pack.equals(its) ? new PackSource(() -> tried.in(pack, open(pack))) : folder(pack))
                .toList();
    }

    /** A pack that is in no folder, with one layout in it. */
    public static PackSource of(TriedLayout tried) {
        Path place = tried.pack(Path.of(""));
        return new PackSource(() -> tried.in(place, new PackFiles(place.toString(), List.of(), List.of())));
    }

    /** Files that are in no pack that is read. */
    static PackSource of(List<PackFile> files) {
        return new PackSource(() -> new PackFiles("", files, List.of()));
    }

    /** The same with nothing but its layouts. */
    public PackSource layoutsAlone() {
        return new PackSource(() -> {
            PackFiles all = files();
            List<PackFile> layouts = all.files().stream()
                    .filter(file -> file.kind() == FileKind.LAYOUT)
                    .toList();
            return new PackFiles(all.from(), layouts, List.of());
        });
    }

    /** The trade's own pack. */
    static PackSource trade() {
        return folder(ClassPathPacks.places().get(0));
    }

    /** A single layout file, which is in no pack. */
    static PackSource layout(Path file) {
        return new PackSource(() -> new FileCollector("").collectLayout(file));
    }

    /** Nothing but one finding. */
    static PackSource broken(Path place, String what, String advice) {
        return new PackSource(() -> nothing(place, what, advice));
    }

    /** Whether a folder holds a pack or part of one, or a file is a jar by its name. */
    static boolean looksLikeAPack(Path place) {
        if (!Files.isDirectory(place)) {
            String name = place.toString();
            return name.endsWith(".jar") || name.endsWith(".zip");
        }
        return Files.exists(place.resolve(FileCollector.MANIFEST))
                || Files.exists(place.resolve(ROOT_IN_JAR))
                || FileKind.folders().stream().anyMatch(kind -> Files.isDirectory(place.resolve(kind)));
    }

    PackFiles files() {
        return opening.get();
    }

    private static PackFiles open(Path place) {
        if (Files.isDirectory(place)) {
            Path root = root(place);
            return new FileCollector(root + "/").collect(place.toString(), root);
        }
        if (!Files.exists(place)) {
            return nothing(place, "There is nothing at this place.", "Look at the spelling of the path.");
        }
        try (FileSystem jar = FileSystems.newFileSystem(place)) {
            Path root = root(jar.getPath("/"));
            String shownRoot = place + "!" + (root.toString().endsWith("/") ? root : root + "/");
            return new FileCollector(shownRoot).collect(place.toString(), root);
        } catch (IOException | ProviderNotFoundException unreadable) {
            return nothing(
                    place,
                    "This is neither a folder nor a jar that can be opened.",
                    "A pack is a folder or a jar with a pack.json in it.");
        }
    }

    private static Path root(Path place) {
        Path inner = place.resolve(ROOT_IN_JAR);
        return !Files.exists(place.resolve(FileCollector.MANIFEST)) && Files.isDirectory(inner) ? inner : place;
    }

    private static PackFiles nothing(Path place, String what, String advice) {
        Report report = Report.on(place.toString());
        report.broken("", what, place, advice);
        return new PackFiles(place.toString(), List.of(), report.findings());
    }
}
