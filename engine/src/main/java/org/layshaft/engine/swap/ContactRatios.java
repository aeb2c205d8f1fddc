package org.layshaft.engine.swap;

import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/** Tells the transverse contact ratio of a pair, from whatever is known of the parts that stand in a layout. */
@FunctionalInterface
public interface ContactRatios {

    /** From a layout alone it cannot be told: it does not say how high the teeth are, nor how far apart the shafts. */
    ContactRatios FROM_LAYOUT_ALONE =
            (layout, mesh) -> Telling.missing("the tip diameters and the centre distance of %s and %s"
                    .formatted(
                            layout.gear(mesh.first()).name(),
                            layout.gear(mesh.second()).name()));

    Telling<Double> of(Layout layout, Mesh mesh);
}
