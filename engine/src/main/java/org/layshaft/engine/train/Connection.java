package org.layshaft.engine.train;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Side;

/** What ties bodies together: one linear equation between their speeds. Bodies are named by part id. */
public sealed interface Connection {

    /** Unique within a train. */
    String id();

    Equation equation();

    /**
     * Two gears in mesh: z₁ω₁ ∓ z₂ω₂ = 0, with minus where they turn the same way. With a planet among them the speeds
     * are those relative to its carrier; a bevel planet turns about an axis of its own, across that of the carrier.
     *
     * @param carrier id of the body that carries one of them round, or both; empty where both stay in their places
     * @param crossing id of the gear whose axis lies across that of the carrier, if any
     */
    record Meshing(Mesh mesh, int firstTeeth, int secondTeeth, Optional<String> carrier, Optional<String> crossing)
            implements Connection {

        /** Two gears that stay in their places. */
        public Meshing(Mesh mesh, int firstTeeth, int secondTeeth) {
            this(mesh, firstTeeth, secondTeeth, Optional.empty(), Optional.empty());
        }

        @Override
        public String id() {
            return "mesh " + mesh.id();
        }

        @Override
        public Equation equation() {
            Map<String, Long> coefficients = new LinkedHashMap<>();
            long ofSecond = -(long) mesh.kind().sense() * secondTeeth;
            coefficients.put(mesh.first(), (long) firstTeeth);
            coefficients.put(mesh.second(), ofSecond);
            long ofCarrier = -(crosses(mesh.first()) ? 0 : firstTeeth) - (crosses(mesh.second()) ? 0 : ofSecond);
            if (carrier.isPresent() && ofCarrier != 0) {
                coefficients.put(carrier.get(), ofCarrier);
            }
            return new Equation(coefficients);
        }

        /** What a force of 1 puts on each body when the driven gear gets only part of it. */
        Map<String, Fraction> pushes(String driven, Fraction part) {
            Map<String, Fraction> pushes = new LinkedHashMap<>();
            Fraction onCarrier = Fraction.ZERO;
            for (Map.Entry<String, Long> term : equation().coefficients().entrySet()) {
                String body = term.getKey();
                if (mesh.joins(body)) {
                    Fraction whole = Fraction.of(term.getValue());
                    Fraction push = body.equals(driven) ? whole.times(part) : whole;
                    pushes.put(body, push);
                    onCarrier = crosses(body) ? onCarrier : onCarrier.minus(push);
                }
            }
            if (carrier.isPresent()) {
                pushes.put(carrier.get(), onCarrier);
            }
            return pushes;
        }

        /** Whether the axis of this gear lies across that of the carrier. */
        boolean crosses(String gear) {
            return crossing.filter(gear::equals).isPresent();
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

    /**
     * A sleeve slid over clutching teeth.
     *
     * @param to id of the gear, dog ring or differential that it then ties
     */
    record Coupled(String sleeve, Side side, String to, String clutchingTeeth) implements Connection {
        @Override
        public String id() {
            return "couple " + sleeve + " " + side.word();
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(sleeve, to);
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

    /** A clutch inside the box, closed. */
    record Closed(String clutch, String driving, String driven) implements Connection {
        @Override
        public String id() {
            return "clutch " + clutch;
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(driving, driven);
        }
    }

    /** A dog ring that stands in the case, or a free gear seized to a spindle that does: ω = 0. */
    record Held(String body, String spindle) implements Connection {
        @Override
        public String id() {
            return "held " + body;
        }

        @Override
        public Equation equation() {
            return new Equation(Map.of(body, 1L));
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

    /** Two shafts, or pieces of them, that a propeller shaft or two flanges join. */
    record Jointed(String joint, String from, String to) implements Connection {
        @Override
        public String id() {
            return "joint " + joint;
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(from, to);
        }
    }

    /** A differential whose two sides turn as one. */
    record Tied(String differential, String left, String right) implements Connection {
        @Override
        public String id() {
            return "tied " + differential;
        }

        @Override
        public Equation equation() {
            return Equation.sameSpeed(left, right);
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

    /**
     * A wheel, or an output shaft on its way to wheels, rolling on one road with the others.
     *
     * @param output id of the body
     * @param turns its turns for one of the road, {@link Train#ROAD}: 1 straight ahead, more on the outside of a bend
     */
    record Rolling(String output, Fraction turns) implements Connection {

        /** Straight ahead. */
        public Rolling(String output) {
            this(output, Fraction.ONE);
        }

        @Override
        public String id() {
            return "road " + output;
        }

        @Override
        public Equation equation() {
            Map<String, Long> coefficients = new LinkedHashMap<>();
            coefficients.put(output, turns.denominator().longValueExact());
            if (!turns.isZero()) {
                coefficients.put(Train.ROAD, turns.numerator().negate().longValueExact());
            }
            return new Equation(coefficients);
        }
    }
}
