package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.asking.Question;
import org.layshaft.web.desk.Cautions;

/**
 * An answer, whole.
 *
 * @param layout id of the layout
 * @param understood the question in our words
 * @param question its kind: {@code gears-left}
 * @param others other readings of what was asked, in words that may be asked again
 * @param says the answer in a few sentences
 * @param gearsMeant names of the gears the question is about; empty for all
 * @param partsMeant ids of the parts the question is about
 * @param seen what was noticed or not, as written, where the question is what may be wrong; otherwise empty
 * @param turning how everything turns; empty where the question has no one motion
 */
public record AnswerJson(
        String layout,
        String understood,
        String question,
        List<String> others,
        List<String> says,
        List<String> gearsMeant,
        List<String> partsMeant,
        List<String> seen,
        List<FaultJson> faults,
        List<GearJson> gears,
        NeutralJson neutral,
        List<ConflictJson> conflicts,
        List<TurningJson> turning,
        List<String> cautions) {

    public static AnswerJson of(Answer answer, List<String> others, Layout layout, Names names, FaultNaming words) {
        return new AnswerJson(
                layout.id(),
                answer.understood(),
                Spelling.of(answer.question().getClass()),
                others,
                answer.says(),
                answer.gearsMeant(),
                answer.partsMeant(),
                seen(answer),
                FaultJson.all(answer.question().faults(), words),
                answer.whatIf().gears().stream()
                        .map(gear -> GearJson.of(gear, names, words))
                        .toList(),
                NeutralJson.of(answer.whatIf().neutral(), words),
                ConflictJson.all(answer.whatIf().conflicts()),
                answer.motion()
                        .map(motion -> TurningJson.all(layout, names, motion))
                        .orElse(List.of()),
                Cautions.of(answer));
    }

    private static List<String> seen(Answer answer) {
        return answer.question() instanceof Question.Suspects asked
                ? asked.evidence().observations().stream()
                        .map(Observation::written)
                        .toList()
                : List.of();
    }
}
