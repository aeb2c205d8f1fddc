package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.engine.rules.RuleCases.OTHER_FAULT;
import static org.layshaft.kb.failure.NoticeWhen.ALWAYS;
import static org.layshaft.kb.failure.NoticeWhen.AT_ITS_GEAR;
import static org.layshaft.kb.failure.NoticeWhen.IN_ANY_GEAR;
import static org.layshaft.kb.failure.NoticeWhen.IN_A_GEAR_THROUGH_TEETH;
import static org.layshaft.kb.failure.NoticeWhen.IN_A_GEAR_WITHOUT_RING;
import static org.layshaft.kb.failure.NoticeWhen.IN_A_GEAR_WITH_RING;
import static org.layshaft.kb.failure.NoticeWhen.IN_ITS_GEAR;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_IT_LOCKS;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_IT_TAKES_THE_DRIVE;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_NEUTRAL_DRIVES;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_SPEED_IS_READ_STANDING;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_TWO_CAN_MEET;
import static org.layshaft.kb.failure.Situation.AT_REST;
import static org.layshaft.kb.failure.Situation.AT_THE_LEVER;
import static org.layshaft.kb.failure.Situation.NEUTRAL_PEDAL_UP;
import static org.layshaft.kb.failure.Situation.PULLING;
import static org.layshaft.kb.failure.Situation.SELECTED;
import static org.layshaft.kb.failure.Situation.SHIFTING_INTO;
import static org.layshaft.kb.layout.Side.FRONT;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Circumstances.SpeedReadFrom;
import org.layshaft.engine.rules.fact.Circumstances.ThroughTeeth;
import org.layshaft.engine.rules.fact.Circumstances.Turns;
import org.layshaft.engine.rules.fact.Faulty.Shows;
import org.layshaft.engine.rules.fact.Mechanism.LetGo;
import org.layshaft.engine.rules.fact.Mechanism.Target;
import org.layshaft.engine.rules.fact.Verdicts.DrivesOtherwise;
import org.layshaft.engine.rules.fact.Verdicts.Locks;
import org.layshaft.engine.rules.fact.Verdicts.Lost;
import org.layshaft.engine.rules.fact.Verdicts.NotDriven;
import org.layshaft.engine.rules.fact.Verdicts.Noticed;
import org.layshaft.engine.rules.fact.Verdicts.Takes;
import org.layshaft.engine.rules.fact.Verdicts.WithRing;
import org.layshaft.engine.rules.fact.Verdicts.WithoutRing;
import org.layshaft.engine.rules.fact.Verdicts.Works;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Side;

/** What a fault makes a person notice, by what becomes of each gear. */
final class NoticeCases {
    private static final Works WORKS = new Works("3");
    private static final Works WORKS_IN_OTHER = new Works("1");
    private static final Takes THIRD = new Takes("3", "3-4-rail", "3-4-sleeve", REAR);
    private static final Lost LOST = new Lost("3", FAULT.words());
    private static final Lost LOST_BY_ANOTHER = new Lost("3", OTHER_FAULT.words());
    private static final NotDriven STANDS = new NotDriven("3");

    private NoticeCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(inItsGear(), inAnyGear(), always(), withoutDrive(), verdicts(), meeting())
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
        Shows any = perhapsHot(IN_ANY_GEAR, SHIFTING_INTO);
        Shows toothed = of(IN_A_GEAR_THROUGH_TEETH, PULLING);
        ThroughTeeth teeth = new ThroughTeeth("3", "third");
        Shows ringed = of(IN_A_GEAR_WITH_RING, SHIFTING_INTO);
        Shows ringless = of(IN_A_GEAR_WITHOUT_RING, SHIFTING_INTO);
        WithRing ring = new WithRing("3");
        WithoutRing noRing = new WithoutRing("3");
        return Stream.of(
                RuleCase.of("notice/in-any-gear", any, WORKS)
                        .concludes(
                                new Noticed("3", "growls", SHIFTING_INTO, Optional.of(Heat.HOT), true, FAULT),
                                any,
                                WORKS)
                        .alone()
                        .notWithInstead(WORKS, new Locks("3")),
                RuleCase.of("notice/through-teeth", toothed, WORKS, teeth)
                        .concludes(noticed("3", PULLING), toothed, WORKS, teeth)
                        .alone()
                        .notWithInstead(teeth, new ThroughTeeth("4", "third"))
                        .notWithInstead(WORKS, WORKS_IN_OTHER),
                RuleCase.of("notice/in-a-gear-with-ring", ringed, ring, WORKS)
                        .concludes(noticed("3", SHIFTING_INTO), ringed, ring, WORKS)
                        .alone()
                        .notWith(noRing)
                        .notWithInstead(ring, new WithRing("1"))
                        .notWithInstead(WORKS, WORKS_IN_OTHER),
                RuleCase.of("notice/in-a-gear-without-ring", ringless, noRing, WORKS)
                        .concludes(noticed("3", SHIFTING_INTO), ringless, noRing, WORKS)
                        .alone()
                        .notWithInstead(noRing, new WithoutRing("1"))
                        .notWithInstead(WORKS, WORKS_IN_OTHER));
    }

    private static Stream<RuleCase> always() {
        Shows atRest = of(ALWAYS, AT_REST);
        Shows pulling = of(ALWAYS, PULLING);
        Target third = new Target("3");
        Target neutral = new Target("neutral");
        return Stream.of(
                RuleCase.of("notice/always", atRest, neutral)
                        .concludes(noticed("neutral", AT_REST), atRest, neutral)
                        .alone()
                        .notWithInstead(atRest, pulling)
                        .notWithInstead(neutral, third),
                RuleCase.of("notice/always-in-gear", pulling, third)
                        .concludes(noticed("3", PULLING), pulling, third)
                        .alone()
                        .notWithInstead(pulling, atRest)
                        .notWithInstead(third, neutral));
    }

    private static Stream<RuleCase> withoutDrive() {
        Shows takes = of(WHERE_IT_TAKES_THE_DRIVE, SELECTED);
        Shows read = of(WHERE_SPEED_IS_READ_STANDING, SELECTED);
        SpeedReadFrom output = new SpeedReadFrom("output");
        Turns turns = new Turns(SELECTED, "3", "some-part", "output");
        return Stream.of(
                RuleCase.of("notice/takes-the-drive", takes, LOST, STANDS)
                        .concludes(noticed("3", SELECTED), takes, LOST, STANDS)
                        .alone()
                        .notWithInstead(STANDS, new DrivesOtherwise("3", Fraction.of(1, 5)))
                        .notWithInstead(LOST, LOST_BY_ANOTHER),
                RuleCase.of("notice/speed-read-standing", read, LOST, STANDS, output, turns)
                        .concludes(noticed("3", SELECTED), read, LOST, STANDS, output, turns)
                        .alone()
                        .notWithInstead(LOST, LOST_BY_ANOTHER)
                        .notWithInstead(STANDS, new NotDriven("1"))
                        .notWithInstead(output, new SpeedReadFrom("differential"))
                        .notWithInstead(turns, new Turns(SELECTED, "1", "some-part", "output"))
                        .notWithInstead(turns, new Turns(PULLING, "3", "some-part", "output")));
    }

    private static Stream<RuleCase> verdicts() {
        Shows neutral = of(WHERE_NEUTRAL_DRIVES, NEUTRAL_PEDAL_UP);
        DrivesOtherwise drives = new DrivesOtherwise("neutral", Fraction.of(1, 2));
        Shows locking = of(WHERE_IT_LOCKS, SELECTED);
        Shows lockingInNeutral = of(WHERE_IT_LOCKS, NEUTRAL_PEDAL_UP);
        Locks locks = new Locks("3");
        Locks locksInNeutral = new Locks("neutral");
        return Stream.of(
                RuleCase.of("notice/neutral-drives", neutral, drives)
                        .concludes(noticed("neutral", NEUTRAL_PEDAL_UP), neutral, drives)
                        .alone()
                        .notWithInstead(drives, new DrivesOtherwise("3", Fraction.of(1, 2))),
                RuleCase.of("notice/locks", locking, locks)
                        .concludes(noticed("3", SELECTED), locking, locks)
                        .alone()
                        .notWithInstead(locks, LOST)
                        .notWithInstead(locks, locksInNeutral),
                RuleCase.of("notice/locks-in-neutral", lockingInNeutral, locksInNeutral)
                        .concludes(noticed("neutral", NEUTRAL_PEDAL_UP), lockingInNeutral, locksInNeutral)
                        .alone()
                        .notWithInstead(locksInNeutral, locks)
                        .notWithInstead(lockingInNeutral, locking));
    }

    private static Stream<RuleCase> meeting() {
        Shows meeting = of(WHERE_TWO_CAN_MEET, SHIFTING_INTO);
        LetGo letGo = new LetGo("3-4-rail", "1-2-rail", FAULT);
        return Stream.of(RuleCase.of("notice/two-can-meet", meeting, letGo, THIRD)
                .concludes(noticed("3", SHIFTING_INTO), meeting, letGo, THIRD)
                .alone()
                .notWithInstead(letGo, new LetGo("1-2-rail", "3-4-rail", FAULT))
                .notWithInstead(letGo, new LetGo("3-4-rail", "1-2-rail", OTHER_FAULT)));
    }

    private static Shows of(NoticeWhen when, Situation situation) {
        return new Shows("growls", when, situation, Optional.empty(), false, "", null, List.of(), FAULT);
    }

    private static Shows perhapsHot(NoticeWhen when, Situation situation) {
        return new Shows("growls", when, situation, Optional.of(Heat.HOT), true, "", null, List.of(), FAULT);
    }

    private static Shows serving(NoticeWhen when, Situation situation, Side side) {
        return new Shows("growls", when, situation, Optional.empty(), false, "3-4-sleeve", side, List.of(), FAULT);
    }

    private static Noticed noticed(String at, Situation situation) {
        return new Noticed(at, "growls", situation, Optional.empty(), false, FAULT);
    }
}
