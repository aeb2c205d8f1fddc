package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.engine.rules.fact.Drive.Source.INPUT;
import static org.layshaft.engine.rules.fact.Drive.Source.ROAD;
import static org.layshaft.kb.failure.NoticeWhen.AT_ITS_GEAR;
import static org.layshaft.kb.failure.NoticeWhen.IN_ANY_GEAR;
import static org.layshaft.kb.failure.NoticeWhen.IN_A_GEAR_WITHOUT_RING;
import static org.layshaft.kb.failure.NoticeWhen.IN_ITS_GEAR;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_IT_LOCKS;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_IT_TAKES_THE_DRIVE;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_NEUTRAL_DRIVES;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_CARRIES;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_TURNS;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_TURNS_IN_MESH;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_TURNS_ON_ITS_SHAFT;
import static org.layshaft.kb.failure.Situation.AT_THE_LEVER;
import static org.layshaft.kb.failure.Situation.NEUTRAL_PEDAL_UP;
import static org.layshaft.kb.failure.Situation.PULLING;
import static org.layshaft.kb.failure.Situation.SELECTED;
import static org.layshaft.kb.failure.Situation.SHIFTING_INTO;
import static org.layshaft.kb.layout.Side.FRONT;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Drive.Carries;
import org.layshaft.engine.rules.fact.Drive.Driven;
import org.layshaft.engine.rules.fact.Faulty.RunsAgainst;
import org.layshaft.engine.rules.fact.Faulty.Shows;
import org.layshaft.engine.rules.fact.Verdicts.DrivesOtherwise;
import org.layshaft.engine.rules.fact.Verdicts.Locks;
import org.layshaft.engine.rules.fact.Verdicts.Lost;
import org.layshaft.engine.rules.fact.Verdicts.NotDriven;
import org.layshaft.engine.rules.fact.Verdicts.Noticed;
import org.layshaft.engine.rules.fact.Verdicts.Takes;
import org.layshaft.engine.rules.fact.Verdicts.WithoutRing;
import org.layshaft.engine.rules.fact.Verdicts.Works;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Side;

/** What a fault makes a person notice. */
final class NoticeCases {
    private static final Works WORKS = new Works("3");
    private static final Works WORKS_IN_OTHER = new Works("1");
    private static final Takes THIRD = new Takes("3", "3-4-rail", "3-4-sleeve", REAR);
    private static final Driven TURNS = driven("3", "third", Fraction.of(1, 2));
    private static final Driven TURNS_IN_NEUTRAL = driven("neutral", "third", Fraction.of(1, 2));

    private NoticeCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(inItsGear(), inAnyGear(), turning(), inMesh(), onItsShaft(), verdicts())
                .flatMap(cases -> cases);
    }

    private static Stream<RuleCase> inItsGear() {
        Shows pulling = serving(IN_ITS_GEAR, PULLING, REAR);
        Shows onBothSides = serving(IN_ITS_GEAR, SHIFTING_INTO, null);
        Shows atTheLever = serving(AT_ITS_GEAR, AT_THE_LEVER, REAR);
        return Stream.of(
                RuleCase.of("notice/at-its-gear", atTheLever, THIRD)
                        .concludes(noticed("3", AT_THE_LEVER), atTheLever, THIRD)
                        .alone()
                        .notWithInstead(atTheLever, serving(AT_ITS_GEAR, AT_THE_LEVER, FRONT)),
                RuleCase.of("notice/in-its-gear", pulling, THIRD, WORKS)
                        .concludes(noticed("3", PULLING), pulling, THIRD, WORKS)
                        .alone()
                        .notWithInstead(pulling, serving(IN_ITS_GEAR, PULLING, FRONT))
                        .notWithInstead(WORKS, WORKS_IN_OTHER),
                RuleCase.of("notice/in-its-gear", onBothSides, THIRD, WORKS)
                        .concludes(noticed("3", SHIFTING_INTO), onBothSides, THIRD, WORKS)
                        .alone()
                        .notWithInstead(THIRD, new Takes("3", "1-2-rail", "1-2-sleeve", REAR)));
    }

    private static Stream<RuleCase> inAnyGear() {
        Shows any = of(IN_ANY_GEAR, SHIFTING_INTO);
        Shows ringless = of(IN_A_GEAR_WITHOUT_RING, SHIFTING_INTO);
        WithoutRing noRing = new WithoutRing("3");
        return Stream.of(
                RuleCase.of("notice/in-any-gear", any, WORKS)
                        .concludes(noticed("3", SHIFTING_INTO), any, WORKS)
                        .alone()
                        .notWithInstead(WORKS, new Locks("3")),
                RuleCase.of("notice/in-a-gear-without-ring", ringless, noRing, WORKS)
                        .concludes(noticed("3", SHIFTING_INTO), ringless, noRing, WORKS)
                        .alone()
                        .notWithInstead(noRing, new WithoutRing("1"))
                        .notWithInstead(WORKS, WORKS_IN_OTHER));
    }

    private static Stream<RuleCase> turning() {
        Shows turning = of(WHILE_IT_TURNS, PULLING);
        Shows idling = of(WHILE_IT_TURNS, NEUTRAL_PEDAL_UP);
        Shows carrying = of(WHILE_IT_CARRIES, PULLING);
        Carries carries = new Carries("3", "third");
        Driven byRoad = new Driven("neutral", ROAD, "third", Fraction.of(1, 2), "third", "");
        return Stream.of(
                RuleCase.of("notice/turning", turning, TURNS, WORKS)
                        .concludes(noticed("3", PULLING), turning, TURNS, WORKS)
                        .alone()
                        .notWithInstead(TURNS, driven("3", "second", Fraction.of(1, 2)))
                        .notWithInstead(WORKS, WORKS_IN_OTHER),
                RuleCase.of("notice/turning-in-neutral", idling, TURNS_IN_NEUTRAL)
                        .concludes(noticed("neutral", NEUTRAL_PEDAL_UP), idling, TURNS_IN_NEUTRAL)
                        .alone()
                        .notWithInstead(TURNS_IN_NEUTRAL, byRoad),
                RuleCase.of("notice/carrying", carrying, WORKS, carries)
                        .concludes(noticed("3", PULLING), carrying, WORKS, carries)
                        .alone()
                        .notWithInstead(carries, new Carries("1", "third")));
    }

    private static Stream<RuleCase> inMesh() {
        Shows inMesh = of(WHILE_IT_TURNS_IN_MESH, PULLING);
        Shows idling = of(WHILE_IT_TURNS_IN_MESH, NEUTRAL_PEDAL_UP);
        RunsAgainst runs = new RunsAgainst("third", "cluster-third", FAULT);
        RunsAgainst other = new RunsAgainst("second", "cluster-second", FAULT);
        return Stream.of(
                RuleCase.of("notice/turning-in-mesh", inMesh, runs, TURNS, WORKS)
                        .concludes(noticed("3", PULLING), inMesh, runs, TURNS, WORKS)
                        .alone()
                        .notWithInstead(runs, other)
                        .notWithInstead(WORKS, WORKS_IN_OTHER),
                RuleCase.of("notice/turning-in-mesh-in-neutral", idling, runs, TURNS_IN_NEUTRAL)
                        .concludes(noticed("neutral", NEUTRAL_PEDAL_UP), idling, runs, TURNS_IN_NEUTRAL)
                        .alone()
                        .notWithInstead(runs, other)
                        .notWithInstead(TURNS_IN_NEUTRAL, TURNS));
    }

    private static Stream<RuleCase> onItsShaft() {
        Shows onShaft = of(WHILE_IT_TURNS_ON_ITS_SHAFT, PULLING);
        Shows idling = of(WHILE_IT_TURNS_ON_ITS_SHAFT, NEUTRAL_PEDAL_UP);
        return Stream.of(
                RuleCase.of("notice/turning-on-its-shaft", onShaft, WORKS, TURNS)
                        .concludes(noticed("3", PULLING), onShaft, WORKS, TURNS)
                        .alone()
                        .notWith(driven("3", "output", Fraction.of(1, 2)))
                        .notWithInstead(WORKS, WORKS_IN_OTHER),
                RuleCase.of("notice/turning-on-its-shaft-in-neutral", idling, TURNS_IN_NEUTRAL)
                        .concludes(noticed("neutral", NEUTRAL_PEDAL_UP), idling, TURNS_IN_NEUTRAL)
                        .alone()
                        .notWith(driven("neutral", "output", Fraction.of(1, 2))));
    }

    private static Stream<RuleCase> verdicts() {
        Shows takes = of(WHERE_IT_TAKES_THE_DRIVE, SELECTED);
        Lost lost = new Lost("3", FAULT.words());
        NotDriven stands = new NotDriven("3");
        Shows neutral = of(WHERE_NEUTRAL_DRIVES, NEUTRAL_PEDAL_UP);
        DrivesOtherwise drives = new DrivesOtherwise("neutral", Fraction.of(1, 2));
        Shows locking = of(WHERE_IT_LOCKS, SELECTED);
        Locks locks = new Locks("3");
        return Stream.of(
                RuleCase.of("notice/takes-the-drive", takes, lost, stands)
                        .concludes(noticed("3", SELECTED), takes, lost, stands)
                        .alone()
                        .notWithInstead(stands, new DrivesOtherwise("3", Fraction.of(1, 5)))
                        .notWithInstead(lost, new Lost("3", RuleCases.OTHER_FAULT.words())),
                RuleCase.of("notice/neutral-drives", neutral, drives)
                        .concludes(noticed("neutral", NEUTRAL_PEDAL_UP), neutral, drives)
                        .alone()
                        .notWithInstead(drives, new DrivesOtherwise("3", Fraction.of(1, 2))),
                RuleCase.of("notice/locks", locking, locks)
                        .concludes(noticed("3", SELECTED), locking, locks)
                        .alone()
                        .notWithInstead(locks, lost));
    }

    private static Shows of(NoticeWhen when, Situation situation) {
        return new Shows("growls", when, situation, false, "third", "output", "", null, List.of(), FAULT);
    }

    private static Shows serving(NoticeWhen when, Situation situation, Side side) {
        return new Shows("growls", when, situation, false, "3-4-fork", "", "3-4-sleeve", side, List.of(), FAULT);
    }

    private static Noticed noticed(String at, Situation situation) {
        return new Noticed(at, "growls", situation.word(), FAULT);
    }

    private static Driven driven(String at, String body, Fraction speed) {
        return new Driven(at, INPUT, body, speed, body, "");
    }
}
