package org.layshaft.kb.pack;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The layouts of packs that do not change, among which others are tried without reading everything anew. Immutable.
 *
 * <p>A layout is told by its own file, by the layouts that it is joined from, and by one that has its id.
 */
public final class FixedLayouts {
    private final List<List<Named>> packs;

    private FixedLayouts(List<List<Named>> packs) {
        this.packs = packs;
    }

    private record Named(String id, PackFile file, String text) {}

    public static FixedLayouts of(List<PackSource> sources) {
        return new FixedLayouts(sources.stream()
                .map(source -> source.files().files().stream()
                        .filter(file -> file.kind() == FileKind.LAYOUT)
                        .flatMap(file -> PackReader.idOf(file).map(id -> named(id, file)).stream())
                        .toList())
                .toList());
    }

    private static Named named(String id, PackFile file) {
        return new Named(id, file, new String(file.bytes(), StandardCharsets.UTF_8));
    }

    /** The text of the first that has this id. */
    public Optional<String> text(String id) {
        return packs.stream()
                .flatMap(List::stream)
                .filter(layout -> layout.id().equals(id))
                .map(Named::text)
                .findFirst();
    }

    /** Those that these texts mention, and those that they mention in turn, pack by pack. */
    public List<PackSource> mentionedIn(Collection<String> texts) {
        Set<Named> mentioned = new HashSet<>();
        Deque<String> ahead = new ArrayDeque<>(texts);
        while (!ahead.isEmpty()) {
            String text = ahead.remove();
            packs.stream()
                    .flatMap(List::stream)
                    .filter(layout -> text.contains('"' + layout.id() + '"'))
                    .filter(mentioned::add)
                    .forEach(layout -> ahead.add(layout.text()));
        }
        return packs.stream()
                .map(pack -> pack.stream()
                        .filter(mentioned::contains)
                        .map(Named::file)
                        .toList())
                .map(PackSource::of)
                .toList();
    }
}
