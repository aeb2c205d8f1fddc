package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.engine.rules.RuleCases.OTHER_FAULT;
import static org.layshaft.kb.failure.NoticeWhen.WHERE_WHEELS_ARE_TIED;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_ITS_COAST_FLANK_CARRIES;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_ITS_DRIVE_FLANK_CARRIES;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_ITS_GEAR_TURNS_ON_IT;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_ITS_SIDES_DIFFER;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_CARRIES;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_ROLLS;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_ROLLS_UNDER_LOAD;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_TURNS;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_TURNS_IN_MESH;
import static org.layshaft.kb.failure.NoticeWhen.WHILE_IT_TURNS_ON_ITS_SHAFT;
import static org.layshaft.kb.failure.Situation.IN_A_BEND;
import static org.layshaft.kb.failure.Situation.NEUTRAL_PEDAL_UP;
import static org.layshaft.kb.failure.Situation.OVERRUN;
import static org.layshaft.kb.failure.Situation.PULLING;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.rules.fact.Circumstances.CarriesThen;
import org.layshaft.engine.rules.fact.Circumstances.CoastFlankCarries;
import org.layshaft.engine.rules.fact.Circumstances.DriveFlankCarries;
import org.layshaft.engine.rules.fact.Circumstances.LiesUnder;
import org.layshaft.engine.rules.fact.Circumstances.SidesDiffer;
import org.layshaft.engine.rules.fact.Circumstances.TurnUnlike;
import org.layshaft.engine.rules.fact.Circumstances.Turns;
import org.layshaft.engine.rules.fact.Circumstances.WheelsTied;
import org.layshaft.engine.rules.fact.Faulty.RunsAgainst;
import org.layshaft.engine.rules.fact.Faulty.Shows;
import org.layshaft.engine.rules.fact.Verdicts.Noticed;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;

/** What a fault makes a person notice, by how its part turns and is loaded. */
final class MotionCases {
    private static final String PART = FAULT.part();
    private static final Turns TURNS = new Turns(PULLING, "3", PART, "third");
    private static final TurnUnlike UNLIKE = new TurnUnlike(PULLING, "3", PART, "output", "third");
    private static final CarriesThen CARRIES = new CarriesThen(PULLING, "3", PART, "third");

    private MotionCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(turning(), rolling(), loaded(), differential()).flatMap(cases -> cases);
    }

    private static Stream<RuleCase> turning() {
        Shows turning = of(WHILE_IT_TURNS, PULLING);
        Shows idling = of(WHILE_IT_TURNS, NEUTRAL_PEDAL_UP);
        Shows inMesh = of(WHILE_IT_TURNS_IN_MESH, PULLING);
        Shows onShaft = of(WHILE_IT_TURNS_ON_ITS_SHAFT, PULLING);
        Turns inNeutral = new Turns(NEUTRAL_PEDAL_UP, "neutral", PART, "third");
        RunsAgainst runs = new RunsAgainst("third", "cluster-third", FAULT);
        return Stream.of(
                RuleCase.of("motion/turning", turning, TURNS)
                        .concludes(noticed("3", PULLING), turning, TURNS)
                        .alone()
                        .notWithInstead(TURNS, new Turns(PULLING, "3", "other-part", "third"))
                        .notWithInstead(TURNS, inNeutral),
                RuleCase.of("motion/turning", idling, inNeutral)
                        .concludes(noticed("neutral", NEUTRAL_PEDAL_UP), idling, inNeutral)
                        .alone()
                        .notWithInstead(inNeutral, TURNS),
                RuleCase.of("motion/turning-in-mesh", inMesh, TURNS, runs)
                        .concludes(noticed("3", PULLING), inMesh, TURNS, runs)
                        .alone()
                        .notWithInstead(runs, new RunsAgainst("second", "cluster-second", FAULT))
                        .notWithInstead(runs, new RunsAgainst("third", "cluster-third", OTHER_FAULT))
                        .notWithInstead(TURNS, inNeutral),
                RuleCase.of("motion/turning-on-its-shaft", onShaft, TURNS, UNLIKE)
                        .concludes(noticed("3", PULLING), onShaft, TURNS, UNLIKE)
                        .alone()
                        .notWithInstead(TURNS, new Turns(PULLING, "4", PART, "third"))
                        .notWithInstead(UNLIKE, new TurnUnlike(PULLING, "4", PART, "output", "third")));
    }

    private static Stream<RuleCase> rolling() {
        Shows rolling = of(WHILE_IT_ROLLS, PULLING);
        Shows underLoad = of(WHILE_IT_ROLLS_UNDER_LOAD, PULLING);
        Shows underGear = of(WHILE_ITS_GEAR_TURNS_ON_IT, PULLING);
        LiesUnder under = new LiesUnder(PART, "third");
        return Stream.of(
                RuleCase.of("motion/rolling", rolling, UNLIKE)
                        .concludes(noticed("3", PULLING), rolling, UNLIKE)
                        .alone()
                        .notWithInstead(UNLIKE, new TurnUnlike(OVERRUN, "3", PART, "output", "third"))
                        .notWithInstead(UNLIKE, new TurnUnlike(PULLING, "3", "other-part", "output", "third")),
                RuleCase.of("motion/gear-turning-on-it", underGear, under, UNLIKE)
                        .concludes(noticed("3", PULLING), underGear, under, UNLIKE)
                        .alone()
                        .notWithInstead(under, new LiesUnder("other-part", "third"))
                        .notWithInstead(UNLIKE, new TurnUnlike(OVERRUN, "3", PART, "output", "third")),
                RuleCase.of("motion/rolling-under-load", underLoad, UNLIKE, CARRIES)
                        .concludes(noticed("3", PULLING), underLoad, UNLIKE, CARRIES)
                        .alone()
                        .notWithInstead(UNLIKE, new TurnUnlike(PULLING, "4", PART, "output", "third"))
                        .notWithInstead(CARRIES, new CarriesThen(PULLING, "4", PART, "third")));
    }

    private static Stream<RuleCase> loaded() {
        Shows carrying = of(WHILE_IT_CARRIES, PULLING);
        Shows onDrive = of(WHILE_ITS_DRIVE_FLANK_CARRIES, PULLING);
        Shows onCoast = of(WHILE_ITS_COAST_FLANK_CARRIES, OVERRUN);
        DriveFlankCarries drive = new DriveFlankCarries(PULLING, "3", PART, "third");
        CoastFlankCarries coast = new CoastFlankCarries(OVERRUN, "3", PART, "third");
        return Stream.of(
                RuleCase.of("motion/carrying", carrying, CARRIES)
                        .concludes(noticed("3", PULLING), carrying, CARRIES)
                        .alone()
                        .notWithInstead(CARRIES, new CarriesThen(OVERRUN, "3", PART, "third")),
                RuleCase.of("motion/drive-flank", onDrive, drive)
                        .concludes(noticed("3", PULLING), onDrive, drive)
                        .alone()
                        .notWithInstead(drive, new CoastFlankCarries(PULLING, "3", PART, "third"))
                        .notWithInstead(drive, new DriveFlankCarries(OVERRUN, "3", PART, "third")),
                RuleCase.of("motion/coast-flank", onCoast, coast)
                        .concludes(noticed("3", OVERRUN), onCoast, coast)
                        .alone()
                        .notWithInstead(coast, new DriveFlankCarries(OVERRUN, "3", PART, "third"))
                        .notWithInstead(coast, new CoastFlankCarries(OVERRUN, "3", "other-part", "third")));
    }

    private static Stream<RuleCase> differential() {
        Shows differing = of(WHILE_ITS_SIDES_DIFFER, IN_A_BEND);
        Shows tied = of(WHERE_WHEELS_ARE_TIED, IN_A_BEND);
        SidesDiffer differ = new SidesDiffer(IN_A_BEND, "3", PART, "differential");
        WheelsTied wheels = new WheelsTied(IN_A_BEND, "3");
        return Stream.of(
                RuleCase.of("motion/sides-differ", differing, differ)
                        .concludes(noticed("3", IN_A_BEND), differing, differ)
                        .alone()
                        .notWithInstead(differ, new SidesDiffer(IN_A_BEND, "3", "other-part", "differential"))
                        .notWithInstead(differ, new SidesDiffer(PULLING, "3", PART, "differential")),
                RuleCase.of("motion/wheels-tied", tied, wheels)
                        .concludes(noticed("3", IN_A_BEND), tied, wheels)
                        .alone()
                        .notWithInstead(wheels, new WheelsTied(PULLING, "3")));
    }

    private static Shows of(NoticeWhen when, Situation situation) {
        return new Shows("growls", when, situation, Optional.empty(), false, "", null, List.of(), FAULT);
    }

    private static Noticed noticed(String at, Situation situation) {
        return new Noticed(at, "growls", situation, Optional.empty(), false, FAULT);
    }
}
