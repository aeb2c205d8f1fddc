package org.layshaft.engine.bench;

import java.util.concurrent.TimeUnit;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.fit.Placement;
import org.layshaft.engine.fit.Serving;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
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

/** How long one verdict takes with every check, its figures and its companions; less than 5 ms. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ServingBenchmark {
    /** One that fits in the Curlew as it is, and one that wants companions or does not fit. */
    @Param({"SM-1003", "SM-1103"})
    public String number;

    private PartsCounter counter;
    private BuiltBox box;
    private Placement placement;

    @Setup
    public void open() {
        counter = PartsCounter.of(PackReader.read(PackSource.onClassPath()).knowledge());
        box = counter.boxes().values().stream()
                .filter(built -> built.build().fitted().containsValue("SM-1003"))
                .findFirst()
                .orElseThrow();
        PartSet set = counter.catalogue().set(number).orElseThrow();
        placement = counter.placements(set, box).stream()
                .filter(at -> at.parts().containsKey("output"))
                .findFirst()
                .orElseThrow();
    }

    @Benchmark
    public Serving serve() {
        return counter.serve(placement, box);
    }
}
