package org.layshaft.engine.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.whatif.Bench;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;

/** The same question has the same answer, whoever asks it and when. */
class ReasonerTest {
    private static final int THREADS = 8;
    private static final List<Fault> FAULTS =
            List.of(Fault.of("3-4-fork", "bent"), Fault.of("interlock", "missing"), Fault.of("third-ring", "worn"));

    @Test
    void the_same_question_twice_has_equal_answers() {
        questions().forEach(question -> {
            WhatIf once = ask(Bench.REASONER, question);
            WhatIf again = ask(Bench.REASONER, question);
            assertNotSame(once, again);
            assertEquals(once, again);
        });
    }

    @Test
    void another_reasoner_answers_alike() {
        Reasoner other = Reasoners.standard(Bench.KNOWLEDGE);
        questions().forEach(question -> {
            assertEquals(Bench.REASONER.box(question.layout()), other.box(question.layout()));
            assertEquals(ask(Bench.REASONER, question), ask(other, question));
        });
    }

    @Test
    void eight_at_once_are_answered_as_one_is() throws Exception {
        Reasoner shared = Reasoners.standard(Bench.KNOWLEDGE);
        List<WhatIf> alone =
                questions().map(question -> ask(Bench.REASONER, question)).toList();
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Callable<List<WhatIf>>> tasks = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                tasks.add(
                        () -> questions().map(question -> ask(shared, question)).toList());
            }
            for (Future<List<WhatIf>> answers : threads.invokeAll(tasks)) {
                assertEquals(alone, answers.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private record Question(Layout layout, List<Fault> faults) {}

    private static Stream<Question> questions() {
        return Bench.KNOWLEDGE.layouts().values().stream()
                .flatMap(layout -> Stream.concat(
                        Stream.of(new Question(layout, List.of())),
                        FAULTS.stream()
                                .filter(fault -> layout.parts().containsKey(fault.part()))
                                .map(fault -> new Question(layout, List.of(fault)))));
    }

    private static WhatIf ask(Reasoner reasoner, Question question) {
        return reasoner.whatIf(question.layout(), question.faults());
    }
}
