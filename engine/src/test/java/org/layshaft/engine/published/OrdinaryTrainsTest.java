package org.layshaft.engine.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.published.Figures.assertPrinted;

import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Statics;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainSketch;
import org.layshaft.engine.train.TrainSolver;

/** Simple, compound and idler trains whose speeds and torques somebody else has printed. */
class OrdinaryTrainsTest {
    /** Horsepower times this over turns per minute is torque in pound-inches, as Wentzell rounds it. */
    private static final Fraction POUND_INCHES = Fraction.of(63_000);

    /** E-33: R. S. Khurmi and J. K. Gupta, Theory of Machines, example 13.1. */
    @Test
    void e33CompoundTrainOfSixGears() {
        Train train = new TrainSketch()
                .mesh("A", 20, "B", 50)
                .on("second", "B", "C")
                .mesh("C", 25, "D", 75)
                .on("third", "D", "E")
                .mesh("E", 26, "F", 65)
                .from("A", "F");
        assertEquals(Fraction.of(52), speed(train, "F", 975).absolute());
    }

    /** E-34: T. H. Wentzell, Machine Design, example 11.1. */
    @Test
    void e34TwoReductionsKeepThePower() {
        Train train = new TrainSketch()
                .mesh("A", 20, "B", 60)
                .on("middle", "B", "C")
                .mesh("C", 20, "D", 60)
                .from("A", "D");
        Fraction out = torque(train).times(Fraction.of(200));
        assertEquals(Fraction.of(400), speed(train, "D", 3600).absolute());
        assertEquals(Fraction.of(1800), out.absolute());
        assertPrinted("11.43", Fraction.of(200 * 3600).over(POUND_INCHES));
        assertPrinted("11.43", out.times(speed(train, "D", 3600)).over(POUND_INCHES));
    }

    /** E-36: Wentzell, example 11.4. */
    @Test
    void e36OnePair() {
        Train train = new TrainSketch().mesh("pinion", 10, "gear", 24).from("pinion", "gear");
        Fraction in = Fraction.of(3, 2).times(POUND_INCHES).over(Fraction.of(3450));
        assertPrinted("27.39", in);
        assertPrinted("65.74", torque(train).times(in).absolute());
        assertPrinted("1437.5", speed(train, "gear", 3450).absolute());
    }

    /** E-37: Wentzell, example 11.5. */
    @Test
    void e37TwoReductionsBringTheSenseBack() {
        Train train = new TrainSketch()
                .mesh("A", 12, "B", 36)
                .on("middle", "B", "C")
                .mesh("C", 16, "D", 64)
                .from("A", "D");
        Motion motion = TrainSolver.solve(train);
        Fraction in = Fraction.of(3, 2).times(POUND_INCHES).over(Fraction.of(1750));
        assertEquals(Fraction.of(12), motion.ratio().orElseThrow());
        assertEquals(Fraction.of(54), in);
        assertEquals(Fraction.of(648), torque(train).times(in));
        assertPrinted("145.83", speed(train, "D", 1750));
        assertEquals(-1, motion.speedOf("B").orElseThrow().signum());
        assertEquals(1, motion.speedOf("D").orElseThrow().signum());
    }

    /** E-38: N. M. Bhatt and J. R. Mehta, Elements of Mechanical Engineering, example 13.5. */
    @Test
    void e38AnIdlerChangesTheSenseAndNotTheRatio() {
        Train train = new TrainSketch()
                .mesh("A", 30, "idler", 45)
                .mesh("idler", 45, "B", 75)
                .from("A", "B");
        assertPrinted("2.5", TrainSolver.solve(train).ratio().orElseThrow());
        assertEquals(Fraction.of(400), speed(train, "B", 1000));
    }

    /** E-38: Bhatt and Mehta, example 13.6. */
    @Test
    void e38CompoundTrain() {
        Train train = new TrainSketch()
                .mesh("A", 25, "B", 50)
                .on("middle", "B", "C")
                .mesh("C", 20, "D", 40)
                .from("A", "D");
        assertEquals(Fraction.of(150), speed(train, "D", 600));
    }

    /** E-39: B. Hayes, American Scientist, July-August 2000: two trains for 1440 to 1. */
    @Test
    void e39TwoWaysToOneTurnInADay() {
        assertEquals(Fraction.of(1440), ratio(pairs(6, 200, 5, 216)).absolute());
        assertEquals(Fraction.of(1440), ratio(pairs(6, 72, 6, 60, 5, 60)).absolute());
    }

    /** E-40: T. Bevan, The Theory of Machines, example 11.1: change wheels of a lathe. */
    @Test
    void e40ChangeWheels() {
        assertEquals(Fraction.of(26, 4), ratio(pairs(25, 65, 30, 75)));
        assertEquals(Fraction.of(35, 4), ratio(pairs(30, 105, 40, 100)));
    }

    /**
     * M-01: Army TM 9-8000, chapter 22: sliding three-speed, printed as about 1.5 for the first stage, 1.5 again in low, 1
     * in second and 2 in reverse by an idler: 1.5 overall in second, 3 in reverse, the sense the other way. What low comes
     * to is cut off in the source as read; it is 2.25.
     */
    @Test
    void m01SlidingThreeSpeed() {
        assertEquals(Fraction.of(9, 4), ratio(pairs(20, 30, 24, 36)));
        assertEquals(Fraction.of(3, 2), ratio(pairs(20, 30, 28, 28)));
        Train reverse = new TrainSketch()
                .mesh("A", 20, "B", 30)
                .on("countershaft", "B", "C")
                .mesh("C", 18, "idler", 16)
                .mesh("idler", 16, "D", 36)
                .from("A", "D");
        assertEquals(Fraction.of(-3), ratio(reverse));
        assertEquals(
                Fraction.of(-2, 3),
                TrainSolver.solve(reverse).speedOf("countershaft").orElseThrow());
    }

    /** Pairs one behind the other, by the teeth of driver and driven in turn. */
    private static Train pairs(int... teeth) {
        TrainSketch sketch = new TrainSketch();
        for (int pair = 0; pair < teeth.length / 2; pair++) {
            sketch.mesh("driver-" + pair, teeth[2 * pair], "driven-" + pair, teeth[2 * pair + 1]);
            if (pair > 0) {
                sketch.on("shaft-" + pair, "driven-" + (pair - 1), "driver-" + pair);
            }
        }
        return sketch.from("driver-0", "driven-" + (teeth.length / 2 - 1));
    }

    private static Fraction ratio(Train train) {
        return TrainSolver.solve(train).ratio().orElseThrow();
    }

    private static Fraction speed(Train train, String body, long inputTurns) {
        return TrainSolver.solve(train).speedOf(body).orElseThrow().times(Fraction.of(inputTurns));
    }

    private static Fraction torque(Train train) {
        return Statics.of(train).torques().map(Balance.Torques::output).orElseThrow();
    }
}
