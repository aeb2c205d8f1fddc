package org.layshaft.engine.train;

import org.layshaft.engine.exact.Fraction;

/**
 * How fast something turns, and what makes it: so many turns for one of the engine, and so many more for one of the road.
 * Where both are tied, all is told in turns of the engine.
 *
 * @param ofEngine turns for one turn of the engine at the input
 * @param ofRoad turns for one turn of the output
 * @param free whether it can turn otherwise too, nothing fixing its speed; the two above then say nothing
 */
public record Speed(Fraction ofEngine, Fraction ofRoad, boolean free) {

    /** What fixes it. */
    public enum FixedBy {
        /** The engine alone. */
        ENGINE,
        /** The road alone. */
        ROAD,
        /** Engine and road together. */
        BOTH,
        /** It is held, or nothing that turns reaches it. */
        STANDS,
        /** Nothing: it may turn as it likes. */
        NOTHING
    }

    public FixedBy fixedBy() {
        if (free) {
            return FixedBy.NOTHING;
        }
        if (ofEngine.isZero()) {
            return ofRoad.isZero() ? FixedBy.STANDS : FixedBy.ROAD;
        }
        return ofRoad.isZero() ? FixedBy.ENGINE : FixedBy.BOTH;
    }

    /** The speed at these speeds of engine and road, in their unit; throws {@link IllegalStateException} where it is free. */
    public Fraction at(Fraction engine, Fraction road) {
        if (free) {
            throw new IllegalStateException("Nothing fixes this speed.");
        }
        return engine.times(ofEngine).plus(road.times(ofRoad));
    }
}
