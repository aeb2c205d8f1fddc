package org.layshaft.engine.train;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        boolean outputStands = train.outputs().stream().allMatch(this::stands);
        if (stands(train.input())) {
            return outputStands ? Outcome.LOCKED : Outcome.INPUT_HELD;
        }
        if (outputStands) {
            return Outcome.OUTPUT_HELD;
        }
        List<Optional<Double>> turns =
                train.outputs().stream().map(this::perTurnOfInput).toList();
        boolean alike = turns.stream()
                .allMatch(each ->
                        each.isPresent() && Math.abs(each.get() - turns.get(0).orElse(Double.NaN)) < TOLERANCE);
        return alike ? Outcome.DRIVES : Outcome.NEUTRAL;
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

    /** Forces by connection id that balance 1 on the input and these loads on the outputs, the least by squares. */
    Map<String, Double> forces(double loadOnEach) {
        SimpleMatrix outside = new SimpleMatrix(train.bodies().size(), 1);
        outside.set(number(train.input()), 0, -1);
        train.outputs().forEach(output -> outside.set(number(output), 0, loadOnEach));
        SimpleMatrix forces = svd.getU()
                .cols(0, rank)
                .mult(svd.getW().extractMatrix(0, rank, 0, rank).invert())
                .mult(svd.getV().cols(0, rank).transpose())
                .mult(outside);
        Map<String, Double> byConnection = new LinkedHashMap<>();
        for (int row = 0; row < train.connections().size(); row++) {
            byConnection.put(train.connections().get(row).id(), forces.get(row, 0));
        }
        return byConnection;
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
