package org.layshaft.web.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.words.Term;

/**
 * All words that are known.
 *
 * @param parts the parts of each layout, by layout id
 * @param questions the shapes of questions, with examples
 */
public record WordsJson(
        List<TermJson> terms,
        List<ModeJson> failureModes,
        List<TermJson> notices,
        List<TermJson> conditions,
        List<TermJson> told,
        List<QuestionJson> questions,
        Map<String, List<LayoutJson.PartJson>> parts) {

    /** A word, with the other words for the same thing. */
    public record TermJson(String id, String name, List<String> also, String means) {}

    /** A shape of question. */
    public record QuestionJson(String intent, List<String> examples) {}

    /**
     * A failure mode.
     *
     * @param befalls the kind of part
     * @param seat for gears, the only seat it can befall; null for any
     * @param unlessTold what can be told of it, with every value
     */
    public record ModeJson(
            String id,
            String befalls,
            String seat,
            String name,
            List<String> also,
            Map<String, List<String>> unlessTold,
            String common,
            String confirm,
            List<String> cautions,
            List<String> leadsTo) {

        private static ModeJson of(FailureMode mode) {
            return new ModeJson(
                    mode.id(),
                    mode.befalls().word(),
                    mode.seat().map((Seat seat) -> Spelling.of(seat)).orElse(null),
                    mode.name(),
                    mode.also(),
                    mode.unlessTold(),
                    Spelling.of(mode.common()),
                    mode.confirm(),
                    mode.cautions(),
                    mode.leadsTo());
        }
    }

    public static WordsJson of(KnowledgeBase knowledge) {
        Map<String, List<LayoutJson.PartJson>> parts = new LinkedHashMap<>();
        knowledge.layouts().forEach((id, layout) -> parts.put(id, LayoutJson.parts(layout, knowledge)));
        return new WordsJson(
                terms(knowledge.words().terms()),
                knowledge.failureModes().stream().map(ModeJson::of).toList(),
                terms(knowledge.words().notices()),
                terms(knowledge.words().conditions()),
                terms(knowledge.words().told()),
                knowledge.words().phrases().stream()
                        .map(phrase -> new QuestionJson(phrase.intent(), phrase.examples()))
                        .toList(),
                parts);
    }

    private static List<TermJson> terms(Map<String, Term> terms) {
        return terms.entrySet().stream()
                .map(entry -> new TermJson(
                        entry.getKey(),
                        entry.getValue().name(),
                        entry.getValue().also(),
                        entry.getValue().means()))
                .toList();
    }
}
