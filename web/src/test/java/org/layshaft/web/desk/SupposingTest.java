package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.kb.failure.Fault;
import org.layshaft.web.asking.Question;

class SupposingTest {
    private static final Fault BENT = Fault.of("3-4-fork", "bent");
    private static final Fault STRIPPED = Fault.of("first", "stripped");
    private static final List<Fault> OWN = List.of(BENT);

    @ParameterizedTest
    @MethodSource("questions")
    void theQuestionStaysAndTheFaultComesAfterItsOwn(Question question) {
        Question more = Supposing.also(question, List.of(STRIPPED));

        assertEquals(List.of(BENT, STRIPPED), more.faults());
        assertEquals(
                question.toString().replace(OWN.toString(), ""),
                more.toString().replace(more.faults().toString(), ""));
    }

    static Stream<Question> questions() {
        return Stream.of(
                new Question.GearsLeft("curlew", OWN, List.of("3")),
                new Question.WhatHappens("curlew", OWN),
                new Question.RatioOf("curlew", OWN, List.of("3")),
                new Question.PowerPath("curlew", OWN, "3"),
                new Question.WhatTurns("curlew", OWN, Optional.of("3"), List.of("third")),
                new Question.WhichWay("curlew", OWN, "third", Optional.of("3")),
                new Question.TwoAtOnce("curlew", OWN, List.of("1", "3")),
                new Question.WhyNot("curlew", OWN, "3"));
    }

    @Test
    void whatTheQuestionSaysOfAFaultPrevails() {
        Question question = new Question.WhatHappens("curlew", List.of(BENT.with("side", "front")));

        assertSame(question, Supposing.also(question, List.of(BENT)));
    }
}
