package org.layshaft.engine.bench;

import java.util.concurrent.TimeUnit;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes to try 2,000 sets at every place of 500 boxes as they are; 10 s on two cores are aimed at. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class CrossBenchmark {
    private static final int SETS = 2_000;
    private static final int BOXES = 500;

    private PartsCounter counter;

    @Setup
    public void open() {
        KnowledgeBase saltmarsh = PackReader.read(PackSource.onClassPath()).knowledge();
        counter = PartsCounter.of(ManyBoxes.of(saltmarsh, BOXES, SETS));
    }

    @Benchmark
    public CrossTable cross() {
        return counter.cross(
                counter.catalogue().sets().values(), counter.boxes().values(), 0, done -> {});
    }
}
