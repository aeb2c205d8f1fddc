package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.exact.Fraction;

/**
 * One stance of one box, ready to be solved. What ties whatever is engaged is best made once, and added to with
 * {@link #with}. Immutable.
 */
public final class Train {
    /** The body that all outputs are tied to, where there are several, and that the load is on. */
    public static final String ROAD = "road";

    private final List<String> bodies;
    private final Map<String, Integer> numbers;
    private final List<Row> rows;
    private final String input;
    private final String output;

    private Train(List<String> bodies, Map<String, Integer> numbers, List<Row> rows, String input, String output) {
        this.bodies = bodies;
        this.numbers = numbers;
        this.rows = rows;
        this.input = input;
        this.output = output;
    }

    /**
     * Throws {@link IllegalArgumentException} where input, output or a connection speaks of a body that there is not,
     * where input and output are one, or where two connections of one id say different things.
     *
     * @param bodies ids of everything that can turn, in the order of the layout
     * @param connections the equations between them
     * @param input the body that the clutch drives
     * @param output the body that the load is on: the output shaft, or the road
     */
    public static Train of(List<String> bodies, List<Connection> connections, String input, String output) {
        Map<String, Integer> numbers = new HashMap<>();
        bodies.forEach(body -> numbers.put(body, numbers.size()));
        for (String end : List.of(input, output)) {
            if (!numbers.containsKey(end)) {
                throw new IllegalArgumentException("'%s' is no body of the train.".formatted(end));
            }
        }
        if (input.equals(output)) {
            throw new IllegalArgumentException("The drive enters and leaves by the same body, '%s'.".formatted(input));
        }
        return new Train(List.copyOf(bodies), numbers, List.of(), input, output).with(connections);
    }

    /** The same train with more tied. What is tied so already stays as it is. */
    public Train with(List<Connection> more) {
        Map<String, Row> all = new LinkedHashMap<>(2 * (rows.size() + more.size()));
        rows.forEach(row -> all.put(row.id(), row));
        for (Connection connection : more) {
            Row row = Row.of(connection, numbers);
            Row twin = all.putIfAbsent(row.id(), row);
            if (twin != null && !twin.connection().equals(connection)) {
                throw new IllegalArgumentException("Two connections are called '%s': %s and %s."
                        .formatted(row.id(), twin.connection(), connection));
            }
        }
        return tiedBy(List.copyOf(all.values()));
    }

    /**
     * The same train in a bend.
     *
     * @param turns of wheels, and of output shafts on their way to wheels, for one turn of the road; others roll straight
     */
    Train inBend(Map<String, Fraction> turns) {
        turns.keySet().forEach(this::number);
        List<Row> bent = new ArrayList<>(rows);
        bent.replaceAll(row ->
                row.connection() instanceof Connection.Rolling rolling && turns.containsKey(rolling.output())
                        ? Row.of(new Connection.Rolling(rolling.output(), turns.get(rolling.output())), numbers)
                        : row);
        return tiedBy(List.copyOf(bent));
    }

    /** The same bodies tied by these rows alone. */
    Train tiedBy(List<Row> some) {
        return new Train(bodies, numbers, some, input, output);
    }

    /** The same bodies tied by these of its connections alone. */
    Train tiedOnlyBy(List<Connection> some) {
        return new Train(bodies, numbers, List.of(), input, output).with(some);
    }

    public List<String> bodies() {
        return bodies;
    }

    public List<Connection> connections() {
        List<Connection> connections = new ArrayList<>(rows.size());
        rows.forEach(row -> connections.add(row.connection()));
        return connections;
    }

    public String input() {
        return input;
    }

    public String output() {
        return output;
    }

    List<Row> rows() {
        return rows;
    }

    /** Number of a body; throws {@link IllegalArgumentException} where there is none of this id. */
    int number(String body) {
        Integer number = numbers.get(body);
        if (number == null) {
            throw new IllegalArgumentException("'%s' is no body of the train.".formatted(body));
        }
        return number;
    }
}
