package org.layshaft.kb.pack;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.layout.Layout;

/**
 * Reads packs, gathering everything that is wrong with them. Thread-safe.
 *
 * <p>Nothing of a broken pack is loaded; the others are. Whatever a file holds, it leads to findings, never to an
 * exception.
 */
public final class PackReader {
    private PackReader() {}

    /** Reads these packs, the first of two that define the same thing being the one that holds. */
    public static Reading read(List<PackSource> sources) {
        return gather(sources.stream().map(PackReader::read).toList());
    }

    /**
     * Reads what stands at these paths beside the trade pack: packs, folders of packs, or single layout files. A
     * checked pack that has the id of the trade pack takes its place.
     */
    public static Reading check(List<Path> paths) {
        List<ReadPack> packs = paths.stream()
                .flatMap(PackReader::sourcesAt)
                .map(PackReader::read)
                .toList();
        ReadPack trade = read(PackSource.trade());
        boolean replaced = packs.stream().anyMatch(pack -> pack.id().equals(trade.id()));
        return gather(
                replaced
                        ? packs
                        : Stream.concat(Stream.of(trade), packs.stream()).toList());
    }

    /**
     * What would come of a layout if it stood in its pack. Nothing is loaded.
     *
     * @param sources all that is read, with the pack of the layout among them: {@link PackSource#packsIn(Path,
     *     TriedLayout)}
     * @param file the layout's file, as findings name it
     */
    public static Trial tryOut(List<PackSource> sources, String file) {
        List<ReadPack> packs = sources.stream().map(PackReader::read).toList();
        LayoutBuilding layouts = checked(packs);
        return new Trial(file, layoutOf(file, packs, layouts), findings(packs));
    }

    private static Optional<Layout> layoutOf(String file, List<ReadPack> packs, LayoutBuilding layouts) {
        return packs.stream()
                .flatMap(pack -> pack.layouts().stream()
                        .filter(read -> read.file().equals(file))
                        .filter(read -> !read.report().isBroken())
                        .map(read -> read.value().id().id())
                        .flatMap(id -> layouts.layoutsOf(pack).stream()
                                .filter(layout -> layout.id().equals(id))))
                .findFirst();
    }

    static Optional<String> idOf(PackFile file) {
        return DocumentReader.read(file.name(), file.bytes())
                .document()
                .flatMap(document -> document.item().get("id").text());
    }

    private static ReadPack read(PackSource source) {
        return PackReading.of(source.files());
    }

    private static Reading gather(List<ReadPack> packs) {
        LayoutBuilding layouts = checked(packs);
        List<Finding> findings = findings(packs);
        return new Reading(
                KnowledgeGathering.of(packs.stream().filter(ReadPack::isSound).toList(), layouts), findings);
    }

    /** Holds all against all, which adds to the reports of the packs. */
    private static LayoutBuilding checked(List<ReadPack> packs) {
        BetweenPacks.check(packs);
        LayoutBuilding layouts = LayoutBuilding.of(packs);
        BuildPlaces.check(packs, layouts);
        return layouts;
    }

    private static List<Finding> findings(List<ReadPack> packs) {
        return packs.stream().flatMap(pack -> pack.findings().stream()).toList();
    }

    private static Stream<PackSource> sourcesAt(Path path) {
        if (Files.isDirectory(path) && !PackSource.looksLikeAPack(path)) {
            List<PackSource> inside = new ArrayList<>(PackSource.packsIn(path));
            return inside.isEmpty()
                    ? Stream.of(PackSource.broken(
                            path,
                            "There is no pack in this folder.",
                            "A pack is a folder with a pack.json and any of: %s."
                                    .formatted(String.join(", ", FileKind.folders()))))
                    : inside.stream();
        }
        return Stream.of(
                Files.isRegularFile(path) && path.toString().endsWith(".json")
                        ? PackSource.layout(path)
                        : PackSource.folder(path));
    }
}
