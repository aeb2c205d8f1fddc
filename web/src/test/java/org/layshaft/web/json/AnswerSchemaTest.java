package org.layshaft.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.Demo;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Understanding.Understood;

/** Every answer keeps to the published schema: one for each failure mode of each layout, and one for each example question. */
class AnswerSchemaTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaFiles.of("answer").orElseThrow(), InputFormat.JSON);

    @ParameterizedTest
    @MethodSource("faults")
    void answersAboutFaultsKeepToIt(Layout layout, List<Fault> faults) {
        assertKeeps(Demo.desk().gearsLeft(layout, faults));
    }

    static Stream<Arguments> faults() {
        return layouts()
                .flatMap(layout -> Stream.concat(
                                Stream.of(List.<Fault>of()),
                                Demo.everyMode(layout).stream().map(List::of))
                        .map(faults -> Arguments.of(layout, faults)));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void answersToQuestionsKeepToIt(Question question) {
        assertKeeps(Demo.desk().answer(question));
    }

    /** Two example questions of each shape, each of the first layout that it makes sense of. */
    static Stream<Question> questions() {
        return Demo.desk().knowledge().words().phrases().stream()
                .flatMap(phrase -> phrase.examples().stream()
                        .flatMap(words -> question(words).stream())
                        .limit(2));
    }

    private static Optional<Question> question(String words) {
        return layouts()
                .map(layout -> Demo.desk().understand(Optional.of(layout), words))
                .filter(Understood.class::isInstance)
                .map(understood -> ((Understood) understood).reading().question())
                .findFirst();
    }

    @Test
    void theSchemaWouldNoticeWhatIsLeftOutOrAdded() {
        assertFalse(SCHEMA.validate("{}", InputFormat.JSON).isEmpty());
        Layout curlew = Demo.layout("curlew");
        String answer = written(Demo.desk().gearsLeft(curlew, List.of()));
        assertTrue(SCHEMA.validate(answer, InputFormat.JSON).isEmpty());
        assertFalse(SCHEMA.validate(
                        answer.replaceFirst("\"verdict\": \"works\"", "\"verdict\": \"fine\""), InputFormat.JSON)
                .isEmpty());
        assertFalse(SCHEMA.validate(answer.replaceFirst("\"says\"", "\"sayz\""), InputFormat.JSON)
                .isEmpty());
    }

    private static Stream<Layout> layouts() {
        return Demo.desk().knowledge().layouts().values().stream();
    }

    private static void assertKeeps(Answer answer) {
        List<Error> errors = SCHEMA.validate(written(answer), InputFormat.JSON);
        assertEquals(List.of(), errors);
    }

    private static String written(Answer answer) {
        Layout layout = Demo.layout(answer.question().layout());
        return Json.write(AnswerJson.of(
                answer,
                List.of(),
                layout,
                Demo.desk().names(layout),
                Demo.desk().faultWords(layout)));
    }
}
