package org.layshaft.engine.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.kb.failure.Fault;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a what-if about Curlew takes, rules, equations and reasons together; nothing is kept between calls. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class WhatIfBenchmark {
    private final KnowledgeBase knowledge =
            PackReader.read(PackSource.onClassPath()).knowledge();
    private final Layout curlew = knowledge.layout("curlew").orElseThrow();
    private final Reasoner reasoner = Reasoners.standard(knowledge);

    /** Which way and how far is not told: four possibilities. */
    @Benchmark
    public WhatIf forkBent() {
        return reasoner.whatIf(curlew, List.of(Fault.of("3-4-fork", "bent")));
    }

    /** Everything is told: one possibility. */
    @Benchmark
    public WhatIf gearStripped() {
        return reasoner.whatIf(curlew, List.of(Fault.of("third", "stripped")));
    }
}
