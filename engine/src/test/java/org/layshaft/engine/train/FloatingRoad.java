package org.layshaft.engine.train;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ejml.simple.SimpleMatrix;
import org.ejml.simple.SimpleSVD;
import org.layshaft.engine.api.Motion.Outcome;

/**
 * The second road: the null space of the equations by singular values, in floating point, with a general library. Shares
 * nothing with the exact solver but the train.
 */
final class FloatingRoad {
    static final double TOLERANCE = 1e-9;

    private final Train train;
    private final SimpleSVD<SimpleMatrix> svd;
    private final int rank;
    private final SimpleMatrix motions;

    FloatingRoad(Train train) {
        this.train = train;
        this.svd = equations(train).svd();
        this.rank = svd.rank();
        this.motions = nullSpace();
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

    /** Speeds of the bodies that have but one while the input turns once; zeros where the input stands. */
    Map<String, Double> speeds() {
        Map<String, Double> speeds = new LinkedHashMap<>();
        for (String body : train.bodies()) {
            if (stands(train.input())) {
                if (stands(body)) {
                    speeds.put(body, 0.0);
                }
            } else {
                perTurnOfInput(body).ifPresent(speed -> speeds.put(body, speed));
            }
        }
        return speeds;
    }

    /**
     * Forces by connection id that balance 1 on the input and this load on the output: of all such, those that share the
     * road most equally among the wheels, and of these the least by squares.
     */
    Map<String, Double> forces(double load) {
        SimpleMatrix outside = new SimpleMatrix(train.bodies().size(), 1);
        outside.set(number(train.input()), 0, -1);
        outside.set(number(train.output()), 0, load);
        SimpleMatrix forces = svd.getU()
                .cols(0, rank)
                .mult(svd.getW().extractMatrix(0, rank, 0, rank).invert())
                .mult(svd.getV().cols(0, rank).transpose())
                .mult(outside);
        List<Integer> onTheRoad = IntStream.range(0, train.connections().size())
                .filter(row -> train.connections().get(row) instanceof Connection.Rolling)
                .boxed()
                .toList();
        if (rank < train.connections().size() && !onTheRoad.isEmpty()) {
            SimpleMatrix open = svd.getU().cols(rank, train.connections().size());
            LeastSquares road = new LeastSquares(rows(open, onTheRoad));
            forces = forces.minus(open.mult(road.solution(rows(forces, onTheRoad))));
            SimpleMatrix stillOpen = open.mult(road.nullSpace());
            forces = forces.minus(stillOpen.mult(new LeastSquares(stillOpen).solution(forces)));
        }
        Map<String, Double> byConnection = new LinkedHashMap<>();
        for (int row = 0; row < train.connections().size(); row++) {
            byConnection.put(train.connections().get(row).id(), forces.get(row, 0));
        }
        return byConnection;
    }

    private static SimpleMatrix rows(SimpleMatrix of, List<Integer> which) {
        SimpleMatrix rows = new SimpleMatrix(which.size(), of.getNumCols());
        for (int row = 0; row < which.size(); row++) {
            rows.insertIntoThis(row, 0, of.rows(which.get(row), which.get(row) + 1));
        }
        return rows;
    }

    private boolean stands(String body) {
        return motionsOf(body).normF() < TOLERANCE;
    }

    private Optional<Double> perTurnOfInput(String body) {
        SimpleMatrix input = motionsOf(train.input());
        double speed = motionsOf(body).dot(input) / input.dot(input);
        boolean fixed = motionsOf(body).minus(input.scale(speed)).normF() < TOLERANCE;
        return fixed ? Optional.of(speed) : Optional.empty();
    }

    private SimpleMatrix motionsOf(String body) {
        return motions.extractVector(true, number(body));
    }

    private int number(String body) {
        return train.bodies().indexOf(body);
    }

    private static SimpleMatrix equations(Train train) {
        SimpleMatrix equations =
                new SimpleMatrix(train.connections().size(), train.bodies().size());
        for (int row = 0; row < train.connections().size(); row++) {
            for (var term :
                    train.connections().get(row).equation().coefficients().entrySet()) {
                equations.set(row, train.bodies().indexOf(term.getKey()), term.getValue());
            }
        }
        return equations;
    }

    /** Columns that span the null space; at least one column, of zeros where there is nothing else. */
    private SimpleMatrix nullSpace() {
        int bodies = train.bodies().size();
        return rank == bodies ? new SimpleMatrix(bodies, 1) : svd.getV().cols(rank, bodies);
    }
}
