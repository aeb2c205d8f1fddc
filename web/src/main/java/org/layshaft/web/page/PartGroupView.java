package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.layshaft.kb.layout.Part;

/** The parts to be found in one place. */
record PartGroupView(String place, List<PartLinkView> links) {

    /**
     * A part among others.
     *
     * @param faulty whether something is supposed to be wrong with it
     */
    record PartLinkView(String text, String href, boolean current, boolean faulty) {}

    /** Those parts that are wanted, by where they are. */
    static List<PartGroupView> of(Scene scene, Predicate<Part> wanted) {
        Map<PartPlace, List<PartLinkView>> byPlace = new EnumMap<>(PartPlace.class);
        for (Part part : scene.layout().parts().values()) {
            if (wanted.test(part)) {
                byPlace.computeIfAbsent(PartPlace.of(part.kind()), place -> new ArrayList<>())
                        .add(link(part, scene));
            }
        }
        return byPlace.entrySet().stream()
                .map(entry -> new PartGroupView(entry.getKey().heading(), entry.getValue()))
                .toList();
    }

    private static PartLinkView link(Part part, Scene scene) {
        return new PartLinkView(
                part.name(),
                scene.address().at(part.id()).link() + "#sheet",
                scene.part().filter(part::equals).isPresent(),
                scene.faults().stream().anyMatch(fault -> fault.part().equals(part.id())));
    }
}
