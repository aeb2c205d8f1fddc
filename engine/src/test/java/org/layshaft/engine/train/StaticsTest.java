package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Side;

class StaticsTest {
    @Test
    void aMeshPutsItsForceTimesItsTeethOnEitherGear() {
        Train train = new TrainSketch().mesh("pinion", 12, "gear", 30).from("pinion", "gear");
        Balance.Torques torques = Statics.of(train).torques().orElseThrow();
        assertEquals(Fraction.of(-1, 12), torques.forces().get("mesh pinion/gear"));
        assertEquals(
                Map.of("pinion", Fraction.of(-1), "gear", Fraction.of(-5, 2)),
                torques.on(train.connections().get(0)));
        assertEquals(Fraction.of(-5, 2), torques.output());
        assertFalse(torques.shareIsAssumed());
    }

    /** Twin countershafts, the output gear floating between them: each carries half, and it is said to be assumed. */
    @Test
    void branchesThatAreAlikeShareAlike() {
        Train twin = new TrainSketch()
                .mesh("input", 30, "left-driven", 45)
                .mesh("input", 30, "right-driven", 45)
                .on("left-countershaft", "left-driven", "left-pinion")
                .on("right-countershaft", "right-driven", "right-pinion")
                .mesh("left-pinion", 20, "output", 50)
                .mesh("right-pinion", 20, "output", 50)
                .from("input", "output");
        Balance.Torques torques = Statics.of(twin).torques().orElseThrow();
        assertTrue(torques.shareIsAssumed());
        assertEquals(Fraction.of(-1, 60), torques.forces().get("mesh input/left-driven"), "half of 1/30 a tooth");
        assertEquals(
                torques.forces().get("mesh left-pinion/output"),
                torques.forces().get("mesh right-pinion/output"));
        assertEquals(Fraction.of(15, 4), torques.output());
    }

    /** A gear both seized and coupled: how the two unlike ways share is assumed, that they share the whole is not. */
    @Test
    void unlikeBranchesShareTheWhole() {
        Train train = new TrainSketch()
                .seized("gear", "shaft")
                .sleeve("sleeve", "shaft")
                .coupled("sleeve", Side.FRONT, "gear")
                .from("gear", "shaft");
        Balance.Torques torques = Statics.of(train).torques().orElseThrow();
        Fraction direct = torques.forces().get("seized gear");
        Fraction bySleeve = torques.forces().get("seat sleeve-hub");
        assertEquals(Fraction.ONE, direct.absolute().plus(bySleeve.absolute()));
        assertTrue(torques.shareIsAssumed());
    }

    @Test
    void inNeutralTheMotionShowsThatNothingPushesBack() {
        Train neutral = new TrainBuilder(Boxes.the("avocet"), Changes.NONE).at(Stance.NEUTRAL);
        Balance.Slips slips = assertInstanceOf(Balance.Slips.class, Statics.of(neutral));
        assertEquals(Fraction.ONE, slips.motion().get("input"));
        assertEquals(Fraction.ZERO, slips.motion().get("output"));
    }

    @Test
    void lockedTheTorqueStaysInTheBox() {
        Train locked = new TrainBuilder(Boxes.the("avocet"), Changes.NONE)
                .at(Stance.NEUTRAL.with("1-2-sleeve", Side.FRONT).with("3-4-sleeve", Side.FRONT));
        assertEquals(new Balance.Held(), Statics.of(locked));
    }

    /** On the whole transaxle, in every gear: with one half-shaft parted neither wheel can get torque. */
    @Test
    void aPartedHalfShaftRobsBothWheels() {
        for (String parted : Set.of("left-half-shaft", "right-half-shaft")) {
            TrainBuilder plover = new TrainBuilder(Boxes.the("plover"), SomeChanges.parted(parted));
            for (Stance stance : Stances.all(Boxes.the("plover"))) {
                Set<String> idle = Statics.carryingNothing(plover.at(stance));
                assertTrue(idle.contains("differential differential"), stance::toString);
                assertTrue(idle.stream().anyMatch(id -> id.startsWith("half-shaft ")), stance::toString);
            }
        }
    }

    @Test
    void onASoundTransaxleTheDifferentialCanCarryInGear() {
        Train third =
                new TrainBuilder(Boxes.the("plover"), Changes.NONE).at(Stance.NEUTRAL.with("3-4-sleeve", Side.FRONT));
        Set<String> idle = Statics.carryingNothing(third);
        assertFalse(idle.contains("differential differential"));
        assertTrue(idle.contains("mesh input-first/first") || idle.contains("mesh first/input-first"));
    }
}
