package org.layshaft.kb.pack;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.words.Words;

/**
 * Everything that the sound packs hold. Immutable.
 *
 * @param layouts by id, in the order of the packs
 */
public record KnowledgeBase(
        List<Pack> packs,
        Map<String, Layout> layouts,
        List<FailureMode> failureModes,
        Words words,
        Catalogue catalogue) {
    public KnowledgeBase {
        packs = List.copyOf(packs);
        layouts = Collections.unmodifiableMap(new LinkedHashMap<>(layouts));
        failureModes = List.copyOf(failureModes);
    }

    public Optional<Layout> layout(String id) {
        return Optional.ofNullable(layouts.get(id));
    }

    /** The failure modes that can befall this part, most common first. */
    public List<FailureMode> failureModesOf(Part part) {
        return failureModes.stream().filter(mode -> mode.canBefall(part)).toList();
    }

    /** The mode that a fault names; empty where the part is unknown or cannot fail so. */
    public Optional<FailureMode> modeOf(Layout layout, Fault fault) {
        return layout.find(Part.class, fault.part()).stream()
                .flatMap(part -> failureModesOf(part).stream())
                .filter(mode -> mode.name().equals(fault.mode()))
                .findFirst();
    }
}
