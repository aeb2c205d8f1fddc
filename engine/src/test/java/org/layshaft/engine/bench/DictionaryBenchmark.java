package org.layshaft.engine.bench;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.symptom.FaultDictionary;
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

/**
 * How long everything takes that single faults of Lapwing show, and that every two of them show together: less than 300 ms
 * and 5 s on two processors, in 300 MB.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Fork(value = 1, jvmArgsAppend = "-Xmx300m")
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 3, time = 5)
public class DictionaryBenchmark {
    private KnowledgeBase knowledge;
    private Box lapwing;
    private FaultDictionary dictionary;

    @Setup
    public void open() {
        knowledge = PackReader.read(PackSource.onClassPath()).knowledge();
        lapwing = Reasoners.standard(knowledge).box(knowledge.layout("lapwing").orElseThrow());
        dictionary = FaultDictionary.of(knowledge, lapwing);
    }

    @Benchmark
    public FaultDictionary singleFaults() {
        return FaultDictionary.of(knowledge, lapwing);
    }

    /** Counts the signs, so that none of them is left out. */
    @Benchmark
    public long pairs() {
        LongAdder signs = new LongAdder();
        dictionary.everyPair(
                (one, other, shown) -> signs.add(shown.cold().certain().cardinality()));
        return signs.sum();
    }
}
