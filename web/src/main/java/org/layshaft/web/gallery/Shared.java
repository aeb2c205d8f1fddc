package org.layshaft.web.gallery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Sleeve;

/**
 * Parts that have a hand in more than one gear, and so take them all along when they fail.
 *
 * @param part id of a gear wheel or a sleeve
 * @param gears by name
 */
public record Shared(String part, List<String> gears) {
    public Shared {
        gears = List.copyOf(gears);
    }

    /** Wheels that carry the power of several gears but not of all, and sleeves that engage several, in the order of the layout. */
    public static List<Shared> in(Box box) {
        Map<String, List<String>> byPart = new LinkedHashMap<>();
        for (String part : box.layout().parts().keySet()) {
            box.gears().stream()
                    .filter(gear -> concerns(gear, part, box))
                    .forEach(gear -> byPart.computeIfAbsent(part, any -> new ArrayList<>())
                            .add(gear.name()));
        }
        return byPart.entrySet().stream()
                .filter(each -> each.getValue().size() > 1)
                .map(each -> new Shared(each.getKey(), each.getValue()))
                .toList();
    }

    private static boolean concerns(DerivedGear gear, String part, Box box) {
        if (box.layout().find(Sleeve.class, part).isPresent()) {
            return gear.pushes().stream().anyMatch(push -> push.member().equals(part));
        }
        return box.layout().find(Gear.class, part).isPresent()
                && gear.motion().carrying().contains(part);
    }
}
