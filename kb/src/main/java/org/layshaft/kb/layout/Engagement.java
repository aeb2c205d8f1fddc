package org.layshaft.kb.layout;

import java.util.List;
import java.util.Optional;

/** What a shift member does when it stands to one side. */
public sealed interface Engagement {

    /**
     * A sleeve ties a gear to its hub through the gear's clutching teeth.
     *
     * @param gear id of the gear
     * @param clutchingTeeth id of the teeth that the sleeve slides over
     * @param ring id of the blocking ring; empty for a plain dog clutch
     */
    record Couples(String gear, String clutchingTeeth, Optional<String> ring) implements Engagement {}

    /** A sliding gear, or the rim of a sleeve, comes into mesh. */
    record Meshes(List<Mesh> meshes) implements Engagement {
        public Meshes {
            meshes = List.copyOf(meshes);
        }
    }
}
