package org.layshaft.kb.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.reading.Located;
import org.layshaft.kb.reading.WordsGathering;

/** Puts together what sound packs hold. */
final class KnowledgeGathering {
    private KnowledgeGathering() {}

    static KnowledgeBase of(List<ReadPack> packs, LayoutBuilding built) {
        Map<String, Layout> layouts = new LinkedHashMap<>();
        packs.forEach(pack -> built.layoutsOf(pack).forEach(layout -> layouts.put(layout.id(), layout)));
        List<FailureMode> modes = new ArrayList<>(values(packs.stream().flatMap(pack -> pack.modes().stream())));
        modes.sort(Comparator.comparing(FailureMode::common));
        return new KnowledgeBase(
                packs.stream().flatMap(pack -> manifest(pack).stream()).toList(),
                layouts,
                modes,
                WordsGathering.gather(
                        values(packs.stream().flatMap(pack -> pack.words().stream())),
                        packs.stream().flatMap(pack -> pack.phrases().stream()).toList()),
                CatalogueGathering.of(packs));
    }

    private static List<Pack> manifest(ReadPack pack) {
        List<String> layouts =
                pack.layouts().stream().map(layout -> layout.value().id().id()).toList();
        return pack.manifest().stream()
                .map(Located::value)
                .map(read -> new Pack(read.id(), read.version(), read.title(), read.from(), layouts))
                .toList();
    }

    private static <T> List<T> values(Stream<Located<T>> located) {
        return located.map(Located::value).toList();
    }
}
