package org.layshaft.engine.train;

import java.util.Map;
import org.layshaft.engine.exact.Fraction;

/** A connection with its bodies numbered: one row of the equations. Immutable; arrays are not handed on to be changed. */
final class Row {
    private final Connection connection;
    private final String id;
    private final int[] bodies;
    private final Fraction[] coefficients;
    private final Fraction[] pushes;

    /** Speed of each of two bodies for one turn of the other; null where there are not two. */
    private final Fraction[] ratios;

    private Row(Connection connection, int[] bodies, Fraction[] coefficients) {
        this.connection = connection;
        this.id = connection.id();
        this.bodies = bodies;
        this.coefficients = coefficients;
        this.pushes = coefficients;
        this.ratios = bodies.length == 2 ? ratios(coefficients) : null;
    }

    private Row(Row row, Fraction[] pushes) {
        this.connection = row.connection;
        this.id = row.id;
        this.bodies = row.bodies;
        this.coefficients = row.coefficients;
        this.pushes = pushes;
        this.ratios = row.ratios;
    }

    /** Throws {@link IllegalArgumentException} for a body without a number. */
    static Row of(Connection connection, Map<String, Integer> numbers) {
        Map<String, Long> terms = connection.equation().coefficients();
        int[] bodies = new int[terms.size()];
        Fraction[] coefficients = new Fraction[bodies.length];
        int place = 0;
        for (Map.Entry<String, Long> term : terms.entrySet()) {
            Integer number = numbers.get(term.getKey());
            if (number == null) {
                throw new IllegalArgumentException(
                        "'%s' ties '%s', which is no body of the train.".formatted(connection.id(), term.getKey()));
            }
            bodies[place] = number;
            coefficients[place++] = Fraction.of(term.getValue());
        }
        return new Row(connection, bodies, coefficients);
    }

    /** The same row with losses: a force of 1 puts this on the body in each place. */
    Row pushing(Fraction[] onBodies) {
        return new Row(this, onBodies);
    }

    Connection connection() {
        return connection;
    }

    String id() {
        return id;
    }

    /** Numbers of the bodies that it ties. */
    int[] bodies() {
        return bodies;
    }

    /** What stands at the speed of the body in this place. */
    Fraction coefficient(int place) {
        return coefficients[place];
    }

    /** What a force of 1 puts on the body in this place; without losses, its coefficient. */
    Fraction push(int place) {
        return pushes[place];
    }

    /** Whether it ties one body to another, or to the case, at a fixed ratio. */
    boolean isPair() {
        return bodies.length <= 2;
    }

    /** The body at the other end of a pair; for one that the case holds, the number that stands for the case. */
    int across(int body, int ground) {
        if (bodies.length == 1) {
            return body == ground ? bodies[0] : ground;
        }
        return bodies[0] == body ? bodies[1] : bodies[0];
    }

    /** What a force of 1 puts on a body of a pair; nothing on the case. */
    Fraction pushOn(int body) {
        if (bodies[0] == body) {
            return pushes[0];
        }
        return bodies.length == 2 ? pushes[1] : Fraction.ZERO;
    }

    /** Speed of this body of a pair for one turn of the other; zero for one that the case holds. */
    Fraction ratioOf(int body) {
        if (ratios == null) {
            return Fraction.ZERO;
        }
        return bodies[0] == body ? ratios[0] : ratios[1];
    }

    private static Fraction[] ratios(Fraction[] coefficients) {
        Fraction first = coefficients[1].over(coefficients[0]).negated();
        return new Fraction[] {first, first.inverse()};
    }
}
