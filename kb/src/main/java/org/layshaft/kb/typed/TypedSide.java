package org.layshaft.kb.typed;

import java.util.List;

/** What was typed for one side of a sleeve or sliding gear. */
public sealed interface TypedSide {
    String pointer();

    /** The same as a part of a unit. */
    TypedSide within(UnitNames unit);

    /** It ties this gear, dog ring or differential. */
    record Couples(Reference to) implements TypedSide {
        @Override
        public String pointer() {
            return to.pointer();
        }

        @Override
        public TypedSide within(UnitNames unit) {
            return new Couples(unit.reference(to));
        }
    }

    /** It comes into mesh with these gears. */
    record Meshes(String pointer, List<Reference> gears) implements TypedSide {
        public Meshes {
            gears = List.copyOf(gears);
        }

        @Override
        public TypedSide within(UnitNames unit) {
            return new Meshes(unit.pointer(), unit.references(gears));
        }
    }

    /** It drives this shaft. */
    record Closes(Reference shaft) implements TypedSide {
        @Override
        public String pointer() {
            return shaft.pointer();
        }

        @Override
        public TypedSide within(UnitNames unit) {
            return new Closes(unit.reference(shaft));
        }
    }

    /** It engages nothing, and that is meant. */
    record Nothing(String pointer) implements TypedSide {
        @Override
        public TypedSide within(UnitNames unit) {
            return new Nothing(unit.pointer());
        }
    }
}
