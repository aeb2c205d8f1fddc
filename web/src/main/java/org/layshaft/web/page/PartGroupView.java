package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.PartKind;

/** The parts of one kind. */
record PartGroupView(String kind, List<LinkView> links) {
    static List<PartGroupView> all(Scene scene) {
        Map<PartKind, List<LinkView>> byKind = new EnumMap<>(PartKind.class);
        for (Part part : scene.layout().parts().values()) {
            byKind.computeIfAbsent(part.kind(), kind -> new ArrayList<>()).add(link(part, scene));
        }
        return byKind.entrySet().stream()
                .map(entry -> new PartGroupView(heading(entry.getKey()), entry.getValue()))
                .toList();
    }

    private static LinkView link(Part part, Scene scene) {
        return new LinkView(
                part.name(),
                scene.address().at(part.id()).link() + "#sheet",
                scene.part().filter(part::equals).isPresent());
    }

    private static String heading(PartKind kind) {
        return switch (kind) {
            case SHAFT -> "Shafts";
            case GEAR -> "Gears";
            case SLEEVE -> "Sleeves";
            case HUB -> "Hubs";
            case BLOCKING_RING -> "Blocking rings";
            case CLUTCHING_TEETH -> "Clutching teeth";
            case DOG_RING -> "Dog rings";
            case FORK -> "Forks";
            case RAIL -> "Rails";
            case DETENT -> "Detents";
            case INTERLOCK -> "Interlock";
            case INTERLOCK_PIECE -> "Pieces of the interlock";
            case BEARING -> "Bearings";
            case CLUTCH -> "Clutches";
            case DIFFERENTIAL -> "Differentials";
            case HALF_SHAFT -> "Half-shafts";
            case JOINT -> "Joints between units";
        };
    }
}
