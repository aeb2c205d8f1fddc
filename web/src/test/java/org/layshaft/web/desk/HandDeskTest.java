package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;
import org.layshaft.web.Demo;

class HandDeskTest {
    private static final Desk DESK = Demo.desk();
    private static final HandDesk HAND = DESK.hand();
    private static final Layout CURLEW = DESK.layout("curlew");

    static Stream<Layout> layouts() {
        return DESK.knowledge().layouts().values().stream();
    }

    /** The rules say of pairs of gears what moving both sleeves comes to by the equations, and what keeps them apart. */
    @ParameterizedTest
    @MethodSource("layouts")
    void twoGearsAtOnceDoWhatTheRulesSay(Layout layout) {
        Map<String, Box.DerivedGear> gears = new HashMap<>();
        DESK.box(layout).gears().forEach(gear -> gears.put(gear.name(), gear));
        for (Conflict conflict : whatIf(layout).conflicts()) {
            Map<String, Side> both = new HashMap<>();
            conflict.gears()
                    .forEach(gear -> gears.get(gear).pushes().forEach(push -> both.put(push.member(), push.side())));
            ByHand set = at(layout, new Stance(both));

            assertEquals(
                    conflict.outcome(), set.motion().outcome(), conflict.gears().toString());
            assertFalse(set.leversAllow(), conflict.gears().toString());
            String apart = String.join(" ", set.ofLevers());
            conflict.preventedBy()
                    .forEach(piece ->
                            assertTrue(apart.contains(DESK.names(layout).of(piece)), apart));
        }
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void whatTheLeversSelectTheyAllow(Layout layout) {
        DESK.box(layout).gears().forEach(gear -> {
            ByHand set = at(layout, gear.stance());
            assertTrue(set.leversAllow(), gear.name() + set.ofLevers());
            assertEquals(gear.motion(), set.motion(), gear.name());
        });
    }

    /** Torque out is torque in times the ratio, and a pair of gears bears the same force on either's teeth. */
    @ParameterizedTest
    @MethodSource("layouts")
    void torquesAgreeWithTheRatioAndWithTheTeeth(Layout layout) {
        DESK.box(layout).gears().forEach(gear -> {
            ByHand set = at(layout, gear.stance());
            var torques = set.torques().orElseThrow();
            assertTrue(torques.through(layout.input()).orElseThrow().compareTo(Fraction.ONE) >= 0, gear.name());
            if (layout.outputs().size() == 1 && layout.takeOffs().isEmpty()) {
                assertEquals(
                        gear.ratio(), torques.through(layout.outputs().get(0)).orElseThrow(), gear.name());
            }
        });
    }

    /** Second and third of the Curlew by hand: 47/24 x 43/28 and 47/24 x 34/37. */
    @Test
    void aLockIsToldWithBothDemands() {
        ByHand set = at(CURLEW, HAND.stance(CURLEW, List.of("1-2:front", "3-4-sleeve:rear")));

        assertEquals(Motion.Outcome.LOCKED, set.motion().outcome());
        String says = String.join(" ", set.says());
        assertTrue(says.contains("3.007 (2021/672)"), says);
        assertTrue(says.contains("1.800 (799/444)"), says);
        assertTrue(says.contains("cannot turn at two speeds"), says);
    }

    @Test
    void twoThatAgreeAreSaidToAgree() {
        Layout agreeing = layouts()
                .filter(layout -> agreeing(layout).isPresent())
                .findFirst()
                .orElseThrow();
        ByHand set = at(agreeing, agreeing(agreeing).orElseThrow());
        assertTrue(
                set.says().stream().anyMatch(said -> said.contains(" agree: ") || said.contains("changes nothing")),
                set.says().toString());
    }

    private static Optional<Stance> agreeing(Layout layout) {
        return layout.members().stream()
                .flatMap(one -> layout.members().stream()
                        .filter(other -> one.part().compareTo(other.part()) < 0)
                        .flatMap(other -> one.sides().keySet().stream()
                                .flatMap(side -> other.sides().keySet().stream()
                                        .map(with -> Stance.NEUTRAL
                                                .with(one.part(), side)
                                                .with(other.part(), with)))))
                .filter(stance -> HAND.outcome(layout, List.of(), stance) == Motion.Outcome.DRIVES)
                .filter(stance -> stance.engaged().entrySet().stream()
                        .allMatch(each ->
                                HAND.outcome(layout, List.of(), Stance.NEUTRAL.with(each.getKey(), each.getValue()))
                                        == Motion.Outcome.DRIVES))
                .findFirst();
    }

    @Test
    void aRailTakesAllItsForksAlong() {
        Layout heron = DESK.layout("heron");
        Stance moved = HandDesk.moved(heron, Stance.NEUTRAL, "1-2-sleeve", Optional.of(Side.REAR));
        assertEquals(Map.of("1-2-sleeve", Side.REAR), moved.engaged());
        assertEquals(Stance.NEUTRAL, HandDesk.moved(heron, moved, "1-2-sleeve", Optional.empty()));
    }

    @Test
    void aSeizedGearLocksWhatItMeets() {
        List<Fault> seized = DESK.faults(CURLEW, List.of("first seized"));
        Stance third = HAND.stance(CURLEW, List.of("3-4:rear"));
        ByHand set = HAND.at(
                CURLEW,
                DESK.names(CURLEW),
                seized,
                DESK.gearsLeft(CURLEW, seized).whatIf(),
                third);
        assertEquals(Motion.Outcome.LOCKED, set.motion().outcome());
        assertTrue(
                set.says().get(1).contains("3-4 sleeve to the rear"), set.says().toString());
    }

    @Test
    void whatCannotBeIsRefusedKindly() {
        assertEquals(
                "Curlew has no sleeve \"7-8\". What can be moved in it: 5-R-sleeve, 3-4-sleeve, 1-2-sleeve.",
                refusal("7-8:front"));
        assertTrue(refusal("1-2").contains("\"5-R-sleeve:front\""), refusal("1-2"));
        assertEquals("\"1-2-sleeve:up\" names no place. A sleeve stands at front, rear or neutral.", refusal("1-2:up"));
    }

    private static String refusal(String written) {
        return assertThrows(BadInputException.class, () -> HAND.stance(CURLEW, List.of(written)))
                .getMessage();
    }

    private static ByHand at(Layout layout, Stance stance) {
        return HAND.at(layout, DESK.names(layout), List.of(), whatIf(layout), stance);
    }

    private static WhatIf whatIf(Layout layout) {
        return DESK.gearsLeft(layout, List.of()).whatIf();
    }
}
