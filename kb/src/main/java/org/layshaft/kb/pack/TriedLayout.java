package org.layshaft.kb.pack;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.finding.Finding;

/**
 * A layout that is to be seen in its pack before it stands there.
 *
 * @param pack name of the pack's folder
 * @param name of its file in {@code layouts}, without {@code .json}
 * @param manifest what the pack is to have for a manifest where it has none
 */
public record TriedLayout(String pack, String name, String text, String manifest) {

    /** The file as findings name it. */
    public String file(Path folder) {
        return file(pack(folder).toString());
    }

    Path pack(Path folder) {
        return folder.resolve(pack);
    }

    /** The pack with this layout in it. */
    PackFiles in(Path place, PackFiles before) {
        String shownManifest = place + "/" + FileCollector.MANIFEST;
        boolean made = before.files().stream().noneMatch(file -> file.kind() == FileKind.MANIFEST);
        Stream<PackFile> others =
                before.files().stream().filter(file -> !file.name().equals(file(place.toString())));
        Stream<PackFile> own = Stream.of(packFile(FileKind.LAYOUT, file(place.toString()), text));
        Stream<PackFile> manifests =
                made ? Stream.of(packFile(FileKind.MANIFEST, shownManifest, manifest)) : Stream.of();
        List<Finding> findings = before.findings().stream()
                .filter(finding -> !made
                        || !finding.file().equals(shownManifest)
                                && !finding.file().equals(place.toString()))
                .toList();
        return new PackFiles(
                place.toString(),
                Stream.of(manifests, others, own).flatMap(files -> files).toList(),
                findings);
    }

    private String file(String place) {
        return "%s/%s/%s.json".formatted(place, FileKind.LAYOUT.folder(), name);
    }

    private static PackFile packFile(FileKind kind, String name, String text) {
        return new PackFile(kind, name, text.getBytes(StandardCharsets.UTF_8));
    }
}
