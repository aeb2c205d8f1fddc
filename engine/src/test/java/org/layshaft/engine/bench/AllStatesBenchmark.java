package org.layshaft.engine.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Stances;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Layout;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long every stance takes that the sleeves of a layout can be brought into, likely or not: of a box with some forty
 * bodies, of one with eighteen speeds, and of whole cars.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class AllStatesBenchmark {
    @Param({"curlew", "heron", "egret", "ibis"})
    private String layout;

    @Benchmark
    public long solveEveryStance() {
        Layout box = Boxes.the(layout);
        TrainBuilder train = new TrainBuilder(box, Changes.NONE);
        List<Stance> stances = Stances.all(box);
        return stances.stream()
                .map(stance -> TrainSolver.solve(train.at(stance)))
                .filter(motion -> motion.outcome() == Motion.Outcome.DRIVES)
                .count();
    }
}
