package org.layshaft.kb.layout;

import java.util.List;
import java.util.Optional;

/** What a shift member does when it stands to one side. */
public sealed interface Engagement {

    /**
     * A sleeve ties its hub to what it slides over the clutching teeth of.
     *
     * @param to id of the gear, dog ring or differential
     * @param clutchingTeeth id of the teeth that the sleeve slides over
     * @param ring id of the blocking ring; empty for a plain dog clutch
     */
    record Couples(String to, String clutchingTeeth, Optional<String> ring) implements Engagement {}

    /** A sliding gear, or the rim of a sleeve, comes into mesh. */
    record Meshes(List<Mesh> meshes) implements Engagement {
        public Meshes {
            meshes = List.copyOf(meshes);
        }
    }

    /**
     * A clutch inside the box is closed.
     *
     * @param shaft id of the shaft that it then drives
     */
    record Closes(String shaft) implements Engagement {}
}
