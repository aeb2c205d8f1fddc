package org.layshaft.engine.bench;

import java.util.concurrent.TimeUnit;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Suspects;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
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

/** How long it takes from evidence to suspects and the next test on Lapwing, its dictionary at hand; less than 50 ms. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class SuspectsBenchmark {
    /** From telling much to telling little; the last but one needs two faults. */
    @Param({
        "pulling 3: growls; pulling 4: not noise; neutral-pedal-up: growls",
        "shifting-into: grinds-going-in",
        "selected 3, 4: no-drive; pulling 1: growls",
        "noise"
    })
    public String written;

    private Layout lapwing;
    private Diagnostician diagnostician;
    private Evidence evidence;

    @Setup
    public void open() {
        KnowledgeBase knowledge = PackReader.read(PackSource.onClassPath()).knowledge();
        Reasoner reasoner = Reasoners.standard(knowledge);
        lapwing = knowledge.layout("lapwing").orElseThrow();
        diagnostician = Reasoners.diagnostician(knowledge, reasoner);
        evidence = diagnostician.read(lapwing, written);
        diagnostician.suspects(lapwing, evidence);
    }

    @Benchmark
    public Suspects suspects() {
        return diagnostician.suspects(lapwing, evidence);
    }
}
