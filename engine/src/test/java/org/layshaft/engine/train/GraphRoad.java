package org.layshaft.engine.train;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.Multigraph;
import org.jgrapht.traverse.BreadthFirstIterator;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/**
 * A third road, without equations: bodies are the nodes of a graph, ties between two of them its edges, and speeds are
 * products of ratios along paths. A part of the graph in which two paths disagree stands still.
 *
 * <p>A differential with both half-shafts whole turns as one with them, straight ahead; with a parted half-shaft it says
 * nothing about any other body, since that half-shaft can take any speed.
 */
final class GraphRoad {
    private final Train train;
    private final Graph<String, Tie> graph = new Multigraph<>(Tie.class);
    private final ConnectivityInspector<String, Tie> parts;
    private final Map<String, Fraction> relative = new HashMap<>();
    private final Map<Set<String>, Boolean> standing = new HashMap<>();
    private final Set<String> held = new HashSet<>();

    GraphRoad(Train train) {
        this.train = train;
        train.bodies().forEach(graph::addVertex);
        train.connections().forEach(this::tie);
        splits().filter(this::isWhole).forEach(split -> add(split.differential(), split.left(), Fraction.ONE));
        this.parts = new ConnectivityInspector<>(graph);
        parts.connectedSets().forEach(part -> standing.put(part, disagrees(part)));
    }

    Outcome outcome() {
        if (stands(train.input())) {
            return stands(train.output()) ? Outcome.LOCKED : Outcome.INPUT_HELD;
        }
        if (stands(train.output())) {
            return Outcome.OUTPUT_HELD;
        }
        return perTurnOfInput(train.output()).isPresent() ? Outcome.DRIVES : Outcome.NEUTRAL;
    }

    Map<String, Fraction> speeds() {
        Map<String, Fraction> speeds = new LinkedHashMap<>();
        train.bodies().forEach(body -> perTurnOfInput(body).ifPresent(speed -> speeds.put(body, speed)));
        splits().filter(split -> !isWhole(split)).forEach(split -> {
            walk(split, split.left(), split.right(), speeds);
            walk(split, split.right(), split.left(), speeds);
        });
        return speeds;
    }

    /** A half-shaft that nothing else ties is fixed where the case and the other half-shaft are. */
    private void walk(Connection.Split split, String loose, String other, Map<String, Fraction> speeds) {
        Fraction ofCase = speeds.get(split.differential());
        if (graph.degreeOf(loose) == 0 && ofCase != null && speeds.containsKey(other)) {
            speeds.put(loose, ofCase.plus(ofCase).minus(speeds.get(other)));
        }
    }

    private Optional<Fraction> perTurnOfInput(String body) {
        if (stands(body)) {
            return Optional.of(Fraction.ZERO);
        }
        return parts.pathExists(train.input(), body)
                ? Optional.of(relative.get(body).over(relative.get(train.input())))
                : Optional.empty();
    }

    private boolean stands(String body) {
        return standing.get(parts.connectedSetOf(body));
    }

    private boolean disagrees(Set<String> part) {
        BreadthFirstIterator<String, Tie> walk =
                new BreadthFirstIterator<>(graph, part.iterator().next());
        while (walk.hasNext()) {
            String body = walk.next();
            Tie tie = walk.getSpanningTreeEdge(body);
            relative.put(
                    body,
                    tie == null
                            ? Fraction.ONE
                            : tie.across(body, relative.get(Graphs.getOppositeVertex(graph, tie, body))));
        }
        return part.stream().anyMatch(held::contains)
                || part.stream()
                        .flatMap(body -> graph.edgesOf(body).stream()
                                .filter(tie -> !relative.get(body)
                                        .equals(tie.across(
                                                body, relative.get(Graphs.getOppositeVertex(graph, tie, body))))))
                        .findAny()
                        .isPresent();
    }

    private void tie(Connection connection) {
        if (connection instanceof Connection.Split) {
            return;
        }
        Map<String, Long> terms = connection.equation().coefficients();
        List<String> ends = List.copyOf(terms.keySet());
        if (ends.size() == 1) {
            held.add(ends.get(0));
        } else {
            add(ends.get(0), ends.get(1), Fraction.of(-terms.get(ends.get(1)), terms.get(ends.get(0))));
        }
    }

    private void add(String first, String second, Fraction firstPerSecond) {
        graph.addEdge(first, second, new Tie(first, firstPerSecond));
    }

    private Stream<Connection.Split> splits() {
        return train.connections().stream()
                .filter(Connection.Split.class::isInstance)
                .map(Connection.Split.class::cast);
    }

    private boolean isWhole(Connection.Split split) {
        return Stream.of(split.left(), split.right())
                .allMatch(halfShaft -> train.connections().stream()
                        .anyMatch(connection -> connection instanceof Connection.Joined joined
                                && joined.halfShaft().equals(halfShaft)));
    }

    /** Two bodies tied at a ratio; no record, as two ties between the same bodies are two edges. */
    private static final class Tie {
        private final String first;
        private final Fraction firstPerSecond;

        Tie(String first, Fraction firstPerSecond) {
            this.first = first;
            this.firstPerSecond = firstPerSecond;
        }

        /** The speed of a body at one end, given that of the other. */
        Fraction across(String body, Fraction otherSpeed) {
            return body.equals(first) ? otherSpeed.times(firstPerSecond) : otherSpeed.over(firstPerSecond);
        }
    }
}
