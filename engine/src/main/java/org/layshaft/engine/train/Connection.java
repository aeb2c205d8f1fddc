package org.layshaft.engine.train;

import java.util.LinkedHashMap;
import java.util.Map;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Side;

/** What ties bodies together: one linear equation between their speeds. Bodies are named by part id. */
public sealed interface Connection {

    /** Unique within a train. */
    String id();

    Equation equation();

    /** Two external gears in mesh: z₁ω₁ + z₂ω₂ = 0. */
    record Meshing(Mesh mesh, int firstTeeth, int secondTeeth) implements Connection {
        @Override
        public String id() {
            return "mesh " + mesh.id();
        }

        @Override
        public Equation equation() {
            Map<String, Long> coefficients = new LinkedHashMap<>();
            coefficients.put(mesh.first(), (long) firstTeeth);
            coefficients.put(mesh.second(), (long) secondTeeth);
            return new Equation(coefficients);
        }
    }

    /**
     * A gear or sleeve fixed on what carries it, so that it turns with it.
     *
     * @param seat id of the part that holds it there: the gear itself, or the hub of a sleeve
     */
    record Seated(String body, String carrier, String seat) implements Connection {
        @Override
        public String id() {
            return "seat " + seat;
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(body, carrier);
        }
    }

    /** A sleeve slid over the clutching teeth of a gear. */
    record Coupled(String sleeve, Side side, String gear, String clutchingTeeth) implements Connection {
        @Override
        public String id() {
            return "couple " + sleeve + " " + side.word();
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(sleeve, gear);
        }
    }

    /** A free gear seized to its shaft. */
    record Seized(String gear, String shaft) implements Connection {
        @Override
        public String id() {
            return "seized " + gear;
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(gear, shaft);
        }
    }

    /** A free gear seized to a spindle that stands in the case: ω = 0. */
    record Held(String gear, String spindle) implements Connection {
        @Override
        public String id() {
            return "held " + gear;
        }

        @Override
        public Equation equation() {
            return new Equation(Map.of(gear, 1L));
        }
    }

    /** A whole half-shaft, from its side gear to its wheel. */
    record Joined(String halfShaft, String wheel) implements Connection {
        @Override
        public String id() {
            return "half-shaft " + halfShaft;
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(halfShaft, wheel);
        }
    }

    /** A bevel differential: ω_left + ω_right = 2 ω_case, the side gears turning with their half-shafts. */
    record Split(String differential, String left, String right) implements Connection {
        @Override
        public String id() {
            return "differential " + differential;
        }

        @Override
        public Equation equation() {
            Map<String, Long> coefficients = new LinkedHashMap<>();
            coefficients.put(left, 1L);
            coefficients.put(right, 1L);
            coefficients.put(differential, -2L);
            return new Equation(coefficients);
        }
    }

    /** The road, straight ahead: both wheels turn alike. */
    record StraightAhead(String left, String right) implements Connection {
        @Override
        public String id() {
            return "straight ahead";
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(left, right);
        }
    }
}
