package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.Demo;

class RememberingReasonerTest {
    private static final Fault BENT = Fault.of("3-4-fork", "bent");

    private final Layout curlew = Demo.layout("curlew");
    private final Reasoner plain = Reasoners.standard(Demo.desk().knowledge());
    private final Reasoner remembering = new RememberingReasoner(plain);

    @Test
    void theSameIsAnsweredOnce() {
        assertSame(
                remembering.whatIf(curlew, List.of(BENT)),
                remembering.whatIf(curlew, List.of(Fault.of("3-4-fork", "bent"))));
    }

    @Test
    void whatIsKeptIsWhatWouldBeFoundOutAgain() {
        remembering.whatIf(curlew, List.of(BENT));
        assertEquals(plain.whatIf(curlew, List.of(BENT)), remembering.whatIf(curlew, List.of(BENT)));
    }

    @Test
    void otherFaultsAndOtherLayoutsAreOtherQuestions() {
        assertNotEquals(
                remembering.whatIf(curlew, List.of(BENT)),
                remembering.whatIf(curlew, List.of(BENT.with("side", "front"))));
        assertNotEquals(
                remembering.whatIf(curlew, List.of(BENT)), remembering.whatIf(Demo.layout("plover"), List.of(BENT)));
    }
}
