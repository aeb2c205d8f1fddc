package org.layshaft.kb.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Parts that are sold, or at least listed, together.
 *
 * @param number unique among parts and sets
 * @param parts part numbers by role
 * @param onlyWhole whether its parts are not to be had one without the others
 * @param oneDesign whether its parts serve only beside the others; each may come alone where those stand already
 * @param note anything that a person should read; empty where there is nothing
 */
public record PartSet(
        String number,
        String name,
        SetShape shape,
        Map<String, String> parts,
        boolean onlyWhole,
        boolean oneDesign,
        String note) {
    public PartSet {
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    /** A part by itself. */
    public static PartSet of(CataloguePart part) {
        return new PartSet(
                part.number(), part.name(), SetShape.SINGLE, Map.of("part", part.number()), false, false, "");
    }
}
