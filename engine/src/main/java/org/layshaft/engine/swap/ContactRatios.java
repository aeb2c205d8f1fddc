package org.layshaft.engine.swap;

import java.util.List;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/** Tells the transverse contact ratio of a pair, from whatever is known of the parts that stand in a layout. */
@FunctionalInterface
public interface ContactRatios {

    /** From a layout alone it cannot be told: it does not say how high the teeth are, nor how far apart the shafts. */
    ContactRatios FROM_LAYOUT_ALONE = (layout, mesh) -> Telling.cannotBeTold(List.of(
            "the tip diameters of %s and %s are missing"
                    .formatted(
                            layout.gear(mesh.first()).name(),
                            layout.gear(mesh.second()).name()),
            "their centre distance is missing"));

    Telling<Double> of(Layout layout, Mesh mesh);
}
