package org.layshaft.kb.pack;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

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
        List<ReadPack> packs =
                sources.stream().map(PackSource::files).map(PackReading::of).toList();
        BetweenPacks.check(packs);
        List<Finding> findings =
                packs.stream().flatMap(pack -> pack.findings().stream()).toList();
        return new Reading(
                KnowledgeGathering.of(packs.stream().filter(ReadPack::isSound).toList()), findings);
    }

    /**
     * Reads what stands at these paths beside the trade pack: packs, folders of packs, or single layout files. A
     * checked pack that has the id of the trade pack takes its place.
     */
    public static Reading check(List<Path> paths) {
        List<PackSource> sources = paths.stream().flatMap(PackReader::sourcesAt).toList();
        PackSource trade = PackSource.trade();
        boolean replaced = ids(sources).anyMatch(id -> ids(List.of(trade)).anyMatch(id::equals));
        return read(
                replaced
                        ? sources
                        : Stream.concat(Stream.of(trade), sources.stream()).toList());
    }

    private static Stream<String> ids(List<PackSource> sources) {
        return sources.stream()
                .map(source -> PackReading.of(source.files()))
                .flatMap(pack -> pack.manifest().stream())
                .map(manifest -> manifest.value().id());
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
