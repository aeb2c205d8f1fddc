package org.layshaft.kb.typed;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.layshaft.kb.layout.Side;

/** What is put in and out of engagement: a sleeve or a sliding gear by a fork, or a clutch inside the box. */
public sealed interface TypedMember permits TypedGear, TypedSleeve, TypedInnerClutch {
    String pointer();

    /** The id of the part. */
    String id();

    /** The name that rails use for it. */
    String base();

    /** What was typed for each side; a side of which nothing was typed is absent. */
    Map<Side, TypedSide> sides();

    /** Whether it has teeth that can come into mesh. */
    boolean hasTeethToMesh();

    /** The id of the gear whose teeth come into mesh; its own id where it has none. */
    String meshingGear();

    /** The same sides, front first. */
    static Map<Side, TypedSide> inOrder(Map<Side, TypedSide> sides) {
        Map<Side, TypedSide> ordered = new EnumMap<>(Side.class);
        ordered.putAll(sides);
        return Collections.unmodifiableMap(ordered);
    }
}
