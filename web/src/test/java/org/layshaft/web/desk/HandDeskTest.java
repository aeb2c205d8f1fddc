package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.Torques;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.Reading;
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

    /**
     * Torque out is torque in times the ratio. In an epicyclic set whose members are tied more goes in than comes out,
     * since some goes round.
     */
    @ParameterizedTest
    @MethodSource("layouts")
    void torquesAgreeWithTheRatio(Layout layout) {
        boolean planets =
                layout.all(Shaft.class).anyMatch(shaft -> shaft.carriedBy().isPresent());
        if (layout.outputs().size() > 1 || !layout.takeOffs().isEmpty()) {
            return;
        }
        DESK.box(layout).gears().forEach(gear -> {
            Torques torques = at(layout, gear.stance()).torques().orElseThrow();
            Fraction out = torques.through(layout.outputs().get(0)).orElseThrow();
            if (planets) {
                assertTrue(out.compareTo(gear.ratio()) >= 0, gear.name());
            } else {
                assertEquals(gear.ratio(), out, gear.name());
            }
        });
    }

    /** Third of the Curlew by hand: 47/24 on the countershaft, 47/24 x 34/37 on third and on the output, none on second. */
    @Test
    void torquesAreThoseOfTheTeeth() {
        Torques torques =
                at(CURLEW, HAND.stance(CURLEW, List.of("3-4:rear"))).torques().orElseThrow();
        assertEquals(Fraction.of(47, 24), torques.through("countershaft").orElseThrow());
        assertEquals(Fraction.of(799, 444), torques.through("third").orElseThrow());
        assertEquals(Fraction.of(799, 444), torques.through("output").orElseThrow());
        assertEquals(Fraction.ZERO, torques.through("second").orElseThrow());
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

    /** 20 to 40 and 25 to 50 are one ratio. */
    @Test
    void twoThatAgreeAreSaidToAgree(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("tattler.json"), """
                { "format": "layshaft/layout/1", "id": "tattler", "module_mm": 2,
                  "shafts": {
                    "input": { "along": [
                      { "gear": "input-one", "teeth": 20, "meshes": "one" },
                      { "gear": "input-other", "teeth": 25, "module_mm": 1.6, "meshes": "other" }
                    ] },
                    "output": { "along": [
                      { "gear": "one", "teeth": 40, "free": true },
                      { "sleeve": "near", "front": "one" },
                      { "sleeve": "far", "rear": "other" },
                      { "gear": "other", "teeth": 50, "module_mm": 1.6, "free": true }
                    ] }
                  } }
                """);
        Reading reading = PackReader.check(List.of(file));
        Layout layout = reading.knowledge().layout("tattler").orElseThrow(() -> new AssertionError(reading.findings()));
        Desk desk = Desk.over(reading.knowledge());
        ByHand set = desk.hand()
                .at(
                        layout,
                        desk.names(layout),
                        List.of(),
                        desk.gearsLeft(layout, List.of()).whatIf(),
                        desk.hand().stance(layout, List.of("near:front", "far:rear")));

        assertEquals(Motion.Outcome.DRIVES, set.motion().outcome());
        assertEquals(
                "It drives, the output the other way than the input, 2 turns of the input for one of the output.",
                set.says().get(0));
        assertTrue(set.says().get(1).contains(" agree: "), set.says().toString());
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
