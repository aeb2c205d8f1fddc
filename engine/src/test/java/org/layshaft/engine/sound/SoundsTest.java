package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Boxes;

/** What repeats in a box, and what follows that nobody has typed. */
class SoundsTest {

    /** 37 teeth on a countershaft at 24/47 of 2400 turns a minute: 755.74 in a second. */
    @Test
    void theThirdPairAt2400() {
        Source third = Heard.the(Heard.in("curlew", "3"), SourceKind.MESH, "third");
        assertEquals(Fraction.of(37 * 24, 47), third.order().perTurn());
        assertEquals(Fraction.of(37 * 24 * 40, 47), third.order().hz(Fraction.of(2400)));
        assertEquals(
                "34 teeth × 444/799 turns of third gear, or 37 teeth × 24/47 turns of the cluster third gear",
                third.how());
        assertTrue(third.loaded());
    }

    @Test
    void inDirectDriveTheMeshesTurnWithoutLoad() {
        List<Source> meshes = Heard.in("curlew", "5").sources().stream()
                .filter(source -> source.kind() == SourceKind.MESH)
                .toList();
        assertEquals(7, meshes.size());
        assertTrue(meshes.stream().noneMatch(Source::loaded));
    }

    @Test
    void theNeedlesUnderTheGearThatIsEngagedAreQuiet() {
        assertTrue(Heard.of(Heard.in("curlew", "3"), SourceKind.BEARING, "third-needles")
                .isEmpty());
        Source inFourth = Heard.the(Heard.in("curlew", "4"), SourceKind.BEARING, "third-needles");
        // fourth turns at 24/47 × 42/29, third at 24/47 × 37/34
        assertEquals(
                Fraction.of(24, 47).times(Fraction.of(42, 29).minus(Fraction.of(37, 34))),
                inFourth.order().perTurn());
        assertFalse(inFourth.loaded());
    }

    @Test
    void aToothOfAnIdlerMeetsTwoGearsInEachTurn() {
        Sounds reverse = Heard.in("curlew", "R");
        Fraction idler = Fraction.of(24 * 17, 47 * 23);
        assertEquals(
                idler,
                Heard.the(reverse, SourceKind.GEAR, "reverse-idler").order().perTurn());
        assertEquals(
                idler.times(Fraction.of(2)),
                Heard.the(reverse, SourceKind.TOOTH, "reverse-idler").order().perTurn());
    }

    @Test
    void aShaftIsToldWithAllThatIsFixedOnIt() {
        Source input = Heard.the(Heard.in("plover", "2"), SourceKind.SHAFT, "input");
        assertEquals(Fraction.ONE, input.order().perTurn());
        assertTrue(input.parts().containsAll(List.of("input-first", "input-fourth", "5-sleeve")));
        assertFalse(input.parts().contains("fifth"));
    }

    @Test
    void aSlidingIdlerOutOfMeshIsNotHeardAndSaidToBeLoose() {
        Sounds third = Heard.in("plover", "3");
        assertTrue(third.sources().stream().noneMatch(source -> source.parts().contains("reverse-idler")));
        assertTrue(third.untold().contains("How fast the reverse idler turns cannot be told, nothing fixes it so."));
    }

    /** Sprocket teeth times its speed; how many links the chain has, nobody has typed. */
    @Test
    void aChain() {
        Sounds third = Heard.in("turnstone", "3");
        Source chain = Heard.the(third, SourceKind.CHAIN, "front-sprocket");
        assertEquals(Fraction.of(16 * 20, 28), chain.order().perTurn());
        assertTrue(
                third.untold()
                        .contains(
                                "How often the chain on the front sprocket is round cannot be told, the number of its links is missing."));
    }

    @Test
    void wheelsBehindAStatedAxle() {
        Source wheels =
                Heard.of(Heard.in("curlew", "5"), SourceKind.WHEEL, "output").get(0);
        assertEquals(Fraction.of(10, 41), wheels.order().perTurn());
        assertTrue(Heard.in("avocet", "4")
                .untold()
                .contains("How fast the wheels turn cannot be told, the axle ratio is missing."));
    }

    @Test
    void aPropellerShaftTurnsOnceAndItsJointsRunUnevenlyTwice() {
        Sounds fifth = Heard.in("egret", "5");
        Fraction once =
                Heard.the(fifth, SourceKind.JOINT, "propeller-shaft").order().perTurn();
        assertEquals(Fraction.ONE, once);
        assertEquals(
                Fraction.of(2),
                Heard.the(fifth, SourceKind.UNIVERSAL_JOINT, "propeller-shaft")
                        .order()
                        .perTurn());
    }

    @Test
    void inEveryGearOfEveryLayoutOrdersRiseInEachFamilyAndNoneIsZero() {
        Boxes.every()
                .forEach(layout -> Heard.gears(layout).forEach(gear -> {
                    List<Source> sources =
                            Sounds.inGear(layout, Heard.names(layout), gear).sources();
                    for (int place = 1; place < sources.size(); place++) {
                        Source before = sources.get(place - 1);
                        Source after = sources.get(place);
                        int families =
                                before.kind().family().compareTo(after.kind().family());
                        assertTrue(
                                families < 0
                                        || families == 0
                                                && before.order()
                                                                .perTurn()
                                                                .compareTo(after.order()
                                                                        .perTurn())
                                                        <= 0,
                                after::what);
                    }
                    assertTrue(sources.stream()
                            .allMatch(source -> source.order().perTurn().signum() > 0));
                }));
    }
}
