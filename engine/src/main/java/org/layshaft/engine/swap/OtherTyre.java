package org.layshaft.engine.swap;

import org.layshaft.kb.layout.Road;

/** Other wheels, by what is known of them. */
public sealed interface OtherTyre {

    /** @param code as on the sidewall: {@code 205/55 R16} */
    record OfSize(String code) implements OtherTyre {
        @Override
        public Road on(Road road) {
            return road.withTyre(code);
        }
    }

    /** @param mm what the wheel rolls in one turn, in mm */
    record Rolling(int mm) implements OtherTyre {
        @Override
        public Road on(Road road) {
            return road.withRollingCircumference(mm);
        }
    }

    /** The same vehicle on these wheels. */
    Road on(Road road);
}
