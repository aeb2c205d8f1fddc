package org.layshaft.web.json;

import java.util.List;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.Pack;

/** Every layout that is loaded. */
public record LayoutsJson(List<Entry> layouts) {

    /**
     * One layout.
     *
     * @param pack id of the pack that brings it
     */
    public record Entry(String id, String name, String summary, String pack) {}

    public static LayoutsJson of(KnowledgeBase knowledge) {
        return new LayoutsJson(knowledge.layouts().values().stream()
                .map(layout -> new Entry(layout.id(), layout.name(), layout.summary(), packOf(layout.id(), knowledge)))
                .toList());
    }

    private static String packOf(String layout, KnowledgeBase knowledge) {
        return knowledge.packs().stream()
                .filter(pack -> pack.layouts().contains(layout))
                .map(Pack::id)
                .findFirst()
                .orElse(null);
    }
}
