package org.layshaft.web.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspect;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.desk.Diagnosis;

/**
 * What may be wrong, going by what was noticed.
 *
 * @param outcome {@code suspects}, {@code no-fault} or {@code cannot-be-told}
 * @param suspects faults that alone explain something of it, the best first
 * @param pairs two faults that together explain more than any one, where none explains everything
 * @param tests what to try next, the one that tells most for its trouble first
 */
public record SuspectsJson(
        String layout,
        List<ObservationJson> seen,
        boolean afterWork,
        String outcome,
        String why,
        List<SuspectJson> suspects,
        List<SuspectJson> pairs,
        List<TestJson> tests) {

    /**
     * Something looked out for.
     *
     * @param written as it may be given again
     * @param says it in words; null inside suspects and tests
     * @param condition null for at any time
     */
    public record ObservationJson(
            String written,
            String says,
            String notice,
            String condition,
            List<String> gears,
            boolean seen,
            String heat) {

        static ObservationJson of(Observation observation, String says) {
            return new ObservationJson(
                    observation.written(),
                    says,
                    observation.notice(),
                    observation.situation().map(Situation::word).orElse(null),
                    observation.gears(),
                    observation.seen(),
                    observation.heat().map(Heat::word).orElse(null));
        }

        static List<ObservationJson> all(List<Observation> observations) {
            return observations.stream()
                    .map(observation -> of(observation, null))
                    .toList();
        }
    }

    /** A suspect: one fault, or two. */
    public record SuspectJson(
            int rank,
            boolean tied,
            List<FaultJson> faults,
            String says,
            int shortfall,
            boolean normal,
            List<ExplainedJson> explains,
            List<ObservationJson> unexplained,
            List<ObservationJson> wrong,
            List<SignJson> predicts,
            String common,
            List<String> basis,
            List<String> confirm,
            String seenAt,
            List<String> cautions,
            List<String> leadsTo,
            List<String> reasons,
            String account) {

        static List<SuspectJson> all(List<Suspect> suspects, FaultNaming words) {
            return suspects.stream()
                    .map(suspect -> of(suspect, suspects, words))
                    .toList();
        }

        private static SuspectJson of(Suspect suspect, List<Suspect> among, FaultNaming words) {
            return new SuspectJson(
                    suspect.rank(),
                    Diagnosis.rank(suspect, among).endsWith("="),
                    FaultJson.all(suspect.faults(), words),
                    suspect.says(),
                    suspect.shortfall(),
                    suspect.normal(),
                    suspect.explains().stream()
                            .map(each -> new ExplainedJson(
                                    ObservationJson.of(each.observation(), null), Spelling.of(each.degree())))
                            .toList(),
                    ObservationJson.all(suspect.unexplained()),
                    ObservationJson.all(suspect.wrong()),
                    suspect.predicts().stream()
                            .map(sign ->
                                    new SignJson(sign.notice(), sign.situation().word(), sign.gears(), sign.says()))
                            .toList(),
                    Spelling.of(suspect.common()),
                    suspect.basis(),
                    suspect.confirm(),
                    suspect.seenAt().word(),
                    suspect.cautions(),
                    suspect.leadsTo(),
                    suspect.reasons(),
                    suspect.account());
        }
    }

    /** @param degree {@code surely}, {@code perhaps} or {@code in-part} */
    public record ExplainedJson(ObservationJson observation, String degree) {}

    /** Something that would follow and that nobody has looked out for. */
    public record SignJson(String notice, String condition, List<String> gears, String says) {}

    /**
     * Something to try.
     *
     * @param condition null where a part is looked at
     * @param bits by how much it is expected to narrow the suspects down
     */
    public record TestJson(
            String says,
            String condition,
            List<String> gears,
            String effort,
            BigDecimal bits,
            List<OutcomeJson> outcomes) {

        static TestJson of(NextTest test, Diagnosis diagnosis) {
            return new TestJson(
                    test.says(),
                    test.situation().map(Situation::word).orElse(null),
                    test.gears(),
                    test.effort().word(),
                    rounded(test.bits()),
                    test.outcomes().stream()
                            .map(outcome -> OutcomeJson.of(outcome, diagnosis))
                            .toList());
        }
    }

    /**
     * What may come of a test.
     *
     * @param seen what to give besides then; empty where a part is looked at
     * @param leaves the suspects that it would leave, in words
     */
    public record OutcomeJson(String says, BigDecimal chance, List<ObservationJson> seen, List<String> leaves) {
        static OutcomeJson of(NextTest.Outcome outcome, Diagnosis diagnosis) {
            List<Suspect> singles = diagnosis.suspects().singles();
            return new OutcomeJson(
                    outcome.says(),
                    rounded(outcome.chance()),
                    ObservationJson.all(outcome.evidence()),
                    outcome.leaves().stream()
                            .filter(place -> place < singles.size())
                            .map(place -> singles.get(place).says())
                            .toList());
        }
    }

    public static SuspectsJson of(Diagnosis diagnosis, FaultNaming words) {
        return new SuspectsJson(
                diagnosis.layout().id(),
                diagnosis.understood().stream()
                        .map(each -> ObservationJson.of(each.observation(), each.says()))
                        .toList(),
                diagnosis.evidence().afterWork(),
                diagnosis.suspects().outcome().word(),
                diagnosis.suspects().why(),
                SuspectJson.all(diagnosis.suspects().singles(), words),
                SuspectJson.all(diagnosis.suspects().pairs(), words),
                diagnosis.suspects().tests().stream()
                        .map(test -> TestJson.of(test, diagnosis))
                        .toList());
    }

    private static BigDecimal rounded(double number) {
        return BigDecimal.valueOf(number).setScale(3, RoundingMode.HALF_UP);
    }
}
