package org.layshaft.engine.rules;

import java.util.stream.Stream;
import org.layshaft.engine.rules.fact.Faulty.Present;

/** Cases for every rule. */
final class RuleCases {
    static final Present FAULT = new Present("some-part", "worn", "some part is worn");
    static final Present OTHER_FAULT = new Present("other-part", "worn", "another part is worn");

    private RuleCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(
                        RailCases.all(),
                        SleeveCases.all(),
                        TieCases.all(),
                        DriveCases.all(),
                        SetCases.all(),
                        RoadCases.all(),
                        VerdictCases.all(),
                        LossCases.all(),
                        NoticeCases.all(),
                        MotionCases.all())
                .flatMap(cases -> cases);
    }
}
