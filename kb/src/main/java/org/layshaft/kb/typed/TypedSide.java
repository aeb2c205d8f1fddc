package org.layshaft.kb.typed;

import java.util.List;

/** What was typed for one side of a sleeve or sliding gear. */
public sealed interface TypedSide {
    String pointer();

    /** It ties this gear, dog ring or differential. */
    record Couples(Reference to) implements TypedSide {
        @Override
        public String pointer() {
            return to.pointer();
        }
    }

    /** It comes into mesh with these gears. */
    record Meshes(String pointer, List<Reference> gears) implements TypedSide {
        public Meshes {
            gears = List.copyOf(gears);
        }
    }

    /** It drives this shaft. */
    record Closes(Reference shaft) implements TypedSide {
        @Override
        public String pointer() {
            return shaft.pointer();
        }
    }

    /** It engages nothing, and that is meant. */
    record Nothing(String pointer) implements TypedSide {}
}
