package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.desk.PartsSayings;

/**
 * Questions that people of the trade put in public, each in other words, with what an accepted answer says. One that is not
 * understood is no answer; one that is understood as something else is wrong, and there must be none.
 */
class QuestionsOfTheTradeTest {
    private static final int RIGHT_AT_LEAST = 36;

    private enum Outcome {
        RIGHT,
        NOT_UNDERSTOOD,
        WRONG
    }

    @Test
    void mostAreAnsweredRightlyAndNoneWrongly() {
        Asking asking = asking();
        List<String> right = new ArrayList<>();
        List<String> not = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (JsonNode question : questions()) {
            String told = question.path("id").asText();
            switch (outcome(asking, question)) {
                case RIGHT -> right.add(told);
                case NOT_UNDERSTOOD -> not.add(told);
                case WRONG -> wrong.add(told);
            }
        }
        System.out.printf("questions of the trade: %d right, not understood %s, wrong %s%n", right.size(), not, wrong);
        assertEquals(List.of(), wrong);
        assertTrue(right.size() >= RIGHT_AT_LEAST, () -> right.size() + " right");
    }

    private static Outcome outcome(Asking asking, JsonNode question) {
        Understanding understanding = asking.understand(
                Optional.of(question.path("layout").asText()),
                question.path("words").asText());
        boolean asMeant = question.path("means").asText().equals(Meant.by(understanding));
        if (understanding instanceof Understanding.Understood understood) {
            String says = String.join(
                    " ", asking.answer(understood.reading().question()).says());
            return asMeant && says.contains(question.path("says").asText()) ? Outcome.RIGHT : Outcome.WRONG;
        }
        return asMeant && understanding instanceof Understanding.Declined ? Outcome.RIGHT : Outcome.NOT_UNDERSTOOD;
    }

    private static Asking asking() {
        KnowledgeBase knowledge = PackReader.read(PackSource.onClassPath()).knowledge();
        Reasoner reasoner = Reasoners.standard(knowledge);
        return new Asking(
                knowledge,
                reasoner,
                Reasoners.diagnostician(knowledge, reasoner),
                new PartsSayings(new PartsDesk(knowledge)));
    }

    private static JsonNode questions() {
        try (InputStream in = QuestionsOfTheTradeTest.class.getResourceAsStream("questions-of-the-trade.json")) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
