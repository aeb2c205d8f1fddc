package org.layshaft.engine.bench;

import java.util.concurrent.TimeUnit;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainSketch;
import org.layshaft.engine.train.TrainSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How the time for one state grows with the number of bodies: stages of shaft and two gears, every fourth one through two
 * countershafts that share the load. The ratios alternate, so that the numbers stay small and the bodies alone count.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class BodiesBenchmark {
    @Param({"20", "50", "100", "200", "400"})
    private int bodies;

    private Train train;

    @Setup
    public void build() {
        TrainSketch sketch = new TrainSketch();
        int placed = 1;
        int stage = 0;
        while (placed + 3 <= bodies) {
            int driving = stage % 2 == 0 ? 20 : 30;
            int driven = stage % 2 == 0 ? 30 : 20;
            sketch.on(shaft(stage), "driving-" + stage)
                    .mesh("driving-" + stage, driving, "driven-" + stage, driven)
                    .on(shaft(stage + 1), "driven-" + stage);
            placed += 3;
            if (stage % 4 == 0 && placed + 1 <= bodies) {
                sketch.mesh("driving-" + stage, driving, "twin-" + stage, driven)
                        .tied("driven-" + stage, "twin-" + stage);
                placed++;
            }
            stage++;
        }
        train = sketch.from(shaft(0), shaft(stage));
    }

    @Benchmark
    public Motion solveOneState() {
        return TrainSolver.solve(train);
    }

    private static String shaft(int stage) {
        return "shaft-" + stage;
    }
}
