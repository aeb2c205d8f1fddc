package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.Locale;
import java.util.Set;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/** Finds a layout by its id, in small or capital letters. */
public final class LayoutFinder {
    private LayoutFinder() {}

    /** Throws {@link BadInputException} with the nearest ids where there is none. */
    public static Layout find(KnowledgeBase knowledge, String id) {
        return knowledge
                .layout(id.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "No layout has the id \"%s\". %s"
                                .formatted(id, known(knowledge.layouts().keySet())),
                        Nearest.to(id, knowledge.layouts().keySet())));
    }

    private static String known(Set<String> ids) {
        return ids.isEmpty()
                ? "No layout is loaded at all: give a folder of packs."
                : "Choose one of: " + String.join(", ", ids) + ".";
    }
}
