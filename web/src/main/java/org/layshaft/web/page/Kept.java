package org.layshaft.web.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/**
 * What goes along from page to page: it stands in the address of each, whether or not that page has a use for it.
 *
 * @param layout that is looked at; empty where none was chosen
 * @param box as the parts pages call it: a build, or the layout where the catalogue tells of boxes of it
 * @param rest gear, faults, observations and units, by the name of their parameter
 */
record Kept(Optional<Layout> layout, Optional<String> box, Map<String, List<String>> rest) {
    private static final List<String> NAMES = List.of("gear", "fault", "seen", "units");

    static Kept of(Map<String, List<String>> query, KnowledgeBase knowledge) {
        Optional<String> box =
                first(query, "box").filter(named -> layoutOf(named, knowledge).isPresent());
        Optional<Layout> layout = box.or(() -> first(query, "layout")).flatMap(named -> layoutOf(named, knowledge));
        Map<String, List<String>> rest = new LinkedHashMap<>();
        NAMES.stream()
                .filter(name -> layout.isPresent() || name.equals("units"))
                .forEach(name -> rest.put(
                        name,
                        query.getOrDefault(name, List.of()).stream()
                                .filter(value -> !value.isBlank())
                                .toList()));
        return new Kept(
                layout,
                box.or(() -> layout.filter(each -> isBuilt(each, knowledge)).map(Layout::id)),
                rest);
    }

    /** The address of a page with all of it. */
    String linkTo(Door door) {
        Query query = new Query().with("layout", layout.map(Layout::id));
        if (door.job() == Door.Job.PARTS) {
            query.with("box", box);
        }
        rest.forEach(query::with);
        return door.path() + query;
    }

    private static Optional<String> first(Map<String, List<String>> query, String name) {
        return query.getOrDefault(name, List.of()).stream()
                .map(String::strip)
                .filter(value -> !value.isEmpty())
                .findFirst();
    }

    /** By the id or name of a layout or of a build of it. */
    private static Optional<Layout> layoutOf(String named, KnowledgeBase knowledge) {
        return knowledge.catalogue().builds().values().stream()
                .filter(build -> named.equalsIgnoreCase(build.id()) || named.equalsIgnoreCase(build.name()))
                .map(Build::layout)
                .findFirst()
                .or(() -> Optional.of(named))
                .flatMap(id -> knowledge.layout(id.toLowerCase(Locale.ROOT)));
    }

    private static boolean isBuilt(Layout layout, KnowledgeBase knowledge) {
        return knowledge.catalogue().builds().values().stream()
                .anyMatch(build -> build.layout().equals(layout.id()));
    }
}
