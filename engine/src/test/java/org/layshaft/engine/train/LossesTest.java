package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.MeshKind;

class LossesTest {
    private static final Fraction PART = Fraction.of(985, 1000);
    private static final Efficiencies EVERY = Efficiencies.ofEveryMesh(PART);
    private static final Train TWO_PAIRS = new TrainSketch()
            .mesh("A", 20, "B", 60)
            .on("middle", "B", "C")
            .mesh("C", 20, "D", 40)
            .from("A", "D");

    /** Pulling, the wheels get less than the ratio says; on the overrun they must bring more. */
    @Test
    void driveAndOverrunDiffer() {
        Losses.Passed drive = passed(TWO_PAIRS, EVERY, Losses.Flow.DRIVE);
        Losses.Passed overrun = passed(TWO_PAIRS, EVERY, Losses.Flow.OVERRUN);
        assertEquals(Fraction.of(6).times(PART).times(PART), drive.output());
        assertEquals(Fraction.of(-6).over(PART).over(PART), overrun.output());
        assertEquals(PART.times(PART), drive.efficiency());
        assertEquals(PART.times(PART), overrun.efficiency());
        assertEquals(
                Fraction.of(15, 1000),
                drive.power().through("mesh A/B").orElseThrow().lost());
    }

    @Test
    void whatIsStatedForAMeshGoesBeforeItsKind() {
        Efficiencies stated = new Efficiencies(Map.of(MeshKind.EXTERNAL, PART), Map.of("mesh C/D", Fraction.of(9, 10)));
        assertEquals(
                PART.times(Fraction.of(9, 10)),
                passed(TWO_PAIRS, stated, Losses.Flow.DRIVE).efficiency());
    }

    @Test
    void aMissingEfficiencyIsNamedAndNotGuessed() {
        Efficiencies stated = new Efficiencies(Map.of(), Map.of("mesh C/D", PART));
        assertEquals(new Losses.Unknown(List.of("mesh A/B")), Losses.of(TWO_PAIRS, stated, Losses.Flow.DRIVE));
    }

    @Test
    void anEfficiencyAboveOneIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Efficiencies.ofEveryMesh(Fraction.of(11, 10)));
    }

    /**
     * Sun in, ring held, carrier out: only the rolling within the set loses. With η₀ for both meshes, the carrier held,
     * and R the teeth of the ring for each of the sun, (1 + η₀R)/(1 + R); the other way, η₀(1 + R)/(η₀ + R). Common
     * practice, no source.
     */
    @Test
    void aPlanetarySetLosesOnlyInRolling() {
        Fraction within = PART.times(PART);
        Fraction three = Fraction.of(3);
        assertEquals(
                Fraction.ONE.plus(within.times(three)).over(Fraction.of(4)),
                passed(planetary("sun", "carrier"), EVERY, Losses.Flow.DRIVE).efficiency());
        assertEquals(
                within.times(Fraction.of(4)).over(within.plus(three)),
                passed(planetary("carrier", "sun"), EVERY, Losses.Flow.DRIVE).efficiency());
    }

    /** Locked up, a planetary set rolls nowhere and loses nothing. */
    @Test
    void whatDoesNotRollLosesNothing() {
        Train solid = new TrainSketch()
                .planetary("carrier", "sun", 24, "planet", 24, "ring", 72)
                .tied("sun", "ring")
                .from("sun", "carrier");
        assertEquals(Fraction.ONE, passed(solid, EVERY, Losses.Flow.DRIVE).efficiency());
    }

    /** A stepped set with a great ratio: the slow side cannot drive the fast one. */
    @Test
    void aGreatRatioIsSelfLockingFromTheSlowSide() {
        Train ferguson = new TrainSketch()
                .meshOn("arm", "held-wheel", 100, "planet", 20)
                .meshOn("arm", "output", 99, "planet", 20)
                .held("held-wheel")
                .from("arm", "output");
        Losses.Passed drive = passed(ferguson, EVERY, Losses.Flow.DRIVE);
        assertTrue(drive.efficiency().compareTo(Fraction.of(1, 2)) < 0);
        assertInstanceOf(Losses.SelfLocking.class, Losses.of(ferguson, EVERY, Losses.Flow.OVERRUN));
    }

    @Test
    void withoutDriveThereIsNothingToLose() {
        Train neutral = new TrainSketch().mesh("A", 20, "B", 60).from("A", "C");
        assertEquals(new Losses.NoDrive(), Losses.of(neutral, EVERY, Losses.Flow.DRIVE));
    }

    /** On random trains: torques balance on every body, and what enters is what leaves and what is lost, exactly. */
    @Test
    void onRandomTrainsNothingGoesMissing() {
        int passed = 0;
        for (long seed = 0; seed < 3000; seed++) {
            Train train = DrawnTrain.of(seed);
            if (Losses.of(train, EVERY, Losses.Flow.DRIVE) instanceof Losses.Passed losses) {
                assertBalanced(train, losses, "seed " + seed);
                passed++;
            }
        }
        assertTrue(passed > 1000, "only " + passed + " pass");
    }

    /** With meshes that lose nothing it all comes to what {@link Statics} says. */
    @Test
    void withoutLossesBothRoadsAgree() {
        for (long seed = 0; seed < 3000; seed++) {
            Train train = DrawnTrain.of(seed);
            Balance balance = Statics.of(train);
            Losses losses = Losses.of(train, Efficiencies.ofEveryMesh(Fraction.ONE), Losses.Flow.DRIVE);
            String where = "seed " + seed;
            if (balance.torques().isPresent()) {
                Losses.Passed same = assertInstanceOf(Losses.Passed.class, losses, where);
                assertEquals(balance.torques().get().output(), same.output(), where);
                assertEquals(Fraction.ONE, same.efficiency(), where);
            } else {
                assertEquals(new Losses.NoDrive(), losses, where);
            }
        }
    }

    private static void assertBalanced(Train train, Losses.Passed losses, String where) {
        Map<String, Fraction> sums = new HashMap<>(Map.of(train.input(), Fraction.ONE));
        losses.torques()
                .values()
                .forEach(torques -> torques.forEach((body, torque) -> sums.merge(body, torque, Fraction::plus)));
        sums.values().removeIf(Fraction::isZero);
        assertEquals(Map.of(train.output(), losses.output()), sums, where);
        Fraction lost = losses.power().flows().stream()
                .map(Power.Flow::lost)
                .peek(each -> assertTrue(each.signum() >= 0, where))
                .reduce(Fraction.ZERO, Fraction::plus);
        assertEquals(Fraction.ONE, losses.efficiency().plus(lost), where);
    }

    private static Train planetary(String input, String output) {
        return new TrainSketch()
                .planetary("carrier", "sun", 24, "planet", 24, "ring", 72)
                .held("ring")
                .from(input, output);
    }

    private static Losses.Passed passed(Train train, Efficiencies efficiencies, Losses.Flow flow) {
        return assertInstanceOf(Losses.Passed.class, Losses.of(train, efficiencies, flow));
    }
}
