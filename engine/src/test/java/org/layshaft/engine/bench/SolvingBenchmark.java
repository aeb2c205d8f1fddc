package org.layshaft.engine.bench;

import java.util.concurrent.TimeUnit;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Statics;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Side;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long one state of a six-speed transaxle takes, Lapwing: third gear, through final drive and differential. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class SolvingBenchmark {
    private static final Stance THIRD = Stance.NEUTRAL.with("3-4-sleeve", Side.FRONT);

    private final TrainBuilder lapwing = new TrainBuilder(Boxes.the("lapwing"), Changes.NONE);
    private final Train third = lapwing.at(THIRD);

    @Benchmark
    public Motion solveOneState() {
        return TrainSolver.solve(third);
    }

    @Benchmark
    public Motion buildAndSolveOneState() {
        return TrainSolver.solve(lapwing.at(THIRD));
    }

    @Benchmark
    public Balance torquesOfOneState() {
        return Statics.of(third);
    }
}
