package org.layshaft.engine.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.published.Figures.assertPrinted;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainSketch;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.MeshKind;

/**
 * Speeds of epicyclic trains as printed elsewhere: KG is R. S. Khurmi and J. K. Gupta, Theory of Machines; SA, B. K.
 * Sarkar, Theory of Machines; BE, T. Bevan, The Theory of Machines. Not here: E-12, as the source read does not tell how
 * its three sets are joined; E-21, which {@link DifferentialTest} has. What is said of torque is in {@link EpicyclicTorqueTest}.
 */
class EpicyclicTest {
    /** KG 13.4. */
    @Test
    void e01ExternalPairOnAnArm() {
        Train train = new TrainSketch().meshOn("arm", "A", 36, "B", 45).from("arm", "B");
        assertSpeed(270, train, Map.of("arm", 150L, "A", 0L), "B");
        assertSpeed(510, train, Map.of("arm", 150L, "A", -300L), "B");
    }

    /** KG 13.5. */
    @Test
    void e02TwoPlanetsOnOneShaft() {
        Train train = steppedPlanets(75, 45, 90, 30);
        assertSpeed(400, train, Map.of("arm", -100L, "B", 0L), "C");
    }

    /** SA 4.8: the same with other wheels; E follows from the equal centre distances, 70 + 35 = 25 + 80. */
    @Test
    void e13TwoPlanetsOnOneShaft() {
        Train train = steppedPlanets(70, 35, 80, 25);
        assertSpeed(540, train, Map.of("arm", -100L, "B", 0L), "C");
    }

    /** KG 13.6. */
    @Test
    void e03RingHeld() {
        Train train = set("C", 32, "B", 20, "A", 72);
        assertSpeed(Fraction.of(117, 2), train, Map.of("arm", 18L, "A", 0L), "C");
        assertSpeed(Fraction.of(-234, 5), train, Map.of("arm", 18L, "A", 0L), "B");
    }

    /** KG 13.7; clockwise counts as positive. */
    @Test
    void e04SunAndRingAgainstEachOther() {
        Train train = set("A", 40, "planet", 25, "D", 90);
        Map<String, Fraction> both = Map.of("A", Fraction.ONE, "D", Fraction.of(-1, 2));
        assertPrinted(
                "-0.04", TrainSolver.speedsGiven(train, both).orElseThrow().get("arm"));
        assertPrinted("0.308", arm(train));
    }

    /** SA 4.11 prints -0.3077 clockwise for the same train; sign and words disagree, and it is 0.3077 clockwise. */
    @Test
    void e15TheArmTurnsWithTheSun() {
        assertPrinted("0.3077", arm(set("A", 40, "planet", 25, "D", 90)));
    }

    /** KG 13.10. */
    @Test
    void e07SteppedPlanetsInAHeldRing() {
        Train train = new TrainSketch()
                .meshOn("arm", "C", 50, "D", 20)
                .on("planet", "D", "E")
                .meshOn("arm", MeshKind.INTERNAL, "E", 35, "G", 105)
                .from("C", "arm");
        assertSpeed(50, train, Map.of("C", 110L, "G", 0L), "arm");
    }

    /** KG 13.12; 38 is printed, truncated from 38.571. */
    @Test
    void e09TwoRings() {
        Train train = new TrainSketch()
                .meshOn("arm", MeshKind.INTERNAL, "E", 26, "B", 80)
                .on("planet", "E", "D")
                .meshOn("arm", MeshKind.INTERNAL, "D", 28, "C", 82)
                .from("arm", "B");
        Fraction exact = speed(train, Map.of("arm", 800L, "C", 0L), "B");
        assertEquals(Fraction.of(270, 7), exact);
        assertPrinted("38.57", exact);
    }

    /** KG 13.13 and SA 4.15: Ferguson's paradox. */
    @Test
    void e10Ferguson() {
        Train train = new TrainSketch()
                .meshOn("arm", "A", 100, "planet", 20)
                .meshOn("arm", "C", 101, "planet", 20)
                .meshOn("arm", "D", 99, "planet", 20)
                .from("arm", "C");
        assertPrinted("0.0099", speed(train, Map.of("arm", 1L, "A", 0L), "C"));
        assertPrinted("-0.0101", speed(train, Map.of("arm", 1L, "A", 0L), "D"));
    }

    /** SA 4.10. */
    @Test
    void e14RingHeld() {
        Train train = set("C", 48, "B", 24, "A", 96);
        assertSpeed(60, train, Map.of("arm", -20L, "A", 0L), "B");
        assertSpeed(-60, train, Map.of("arm", -20L, "A", 0L), "C");
    }

    /** BE 11.6. */
    @Test
    void e18TwoPairsOnAnArm() {
        Train train = new TrainSketch()
                .meshOn("arm", "B", 75, "C", 18)
                .on("planet", "C", "D")
                .meshOn("arm", "D", 17, "E", 71)
                .from("arm", "E");
        assertPrinted("1.174", speed(train, Map.of("arm", 500L, "B", 0L), "E"));
        assertPrinted("100.9", speed(train, Map.of("arm", 500L, "B", 100L), "E"));
    }

    /** Encyclopaedic relations beside E-20: what each of the six ways through one set comes to. */
    @Test
    void relationsOfOneSet() {
        Train train = set("sun", 30, "planet", 20, "ring", 70);
        Map<String, Long> carrierHeld = Map.of("sun", 1L, "arm", 0L);
        assertEquals(
                Fraction.of(100, 30),
                speed(train, Map.of("sun", 1L, "ring", 0L), "arm").inverse());
        assertEquals(
                Fraction.of(100, 70),
                speed(train, Map.of("ring", 1L, "sun", 0L), "arm").inverse());
        assertEquals(Fraction.of(-70, 30), speed(train, carrierHeld, "ring").inverse());
        assertSpeed(1, train, Map.of("sun", 1L, "ring", 1L), "arm");
    }

    /** KG 13.16. */
    @Test
    void e27BevelWheelsOnAnArm() {
        assertPrinted("366.7", speed(bevel(40, 30), Map.of("A", -100L, "arm", 100L), "B"));
    }

    /** SA 4.13. */
    @Test
    void e28BevelWheelsOnAnArm() {
        assertSpeed(400, bevel(20, 10), Map.of("A", -50L, "arm", 100L), "B");
    }

    private static Train bevel(int ofA, int ofB) {
        return new TrainSketch()
                .meshOn("arm", MeshKind.BEVEL_OPPOSITE, "A", ofA, "B", ofB)
                .from("A", "B");
    }

    private static Train steppedPlanets(int ofB, int ofE, int ofD, int ofC) {
        return new TrainSketch()
                .meshOn("arm", "B", ofB, "E", ofE)
                .on("planet", "D", "E")
                .meshOn("arm", "D", ofD, "C", ofC)
                .from("arm", "C");
    }

    private static Train set(String sun, int sunTeeth, String planet, int planetTeeth, String ring, int ringTeeth) {
        return new TrainSketch()
                .planetary("arm", sun, sunTeeth, planet, planetTeeth, ring, ringTeeth)
                .from(sun, "arm");
    }

    private static Fraction arm(Train train) {
        return speed(train, Map.of("A", 1L, "D", 0L), "arm");
    }

    private static void assertSpeed(long expected, Train train, Map<String, Long> given, String body) {
        assertSpeed(Fraction.of(expected), train, given, body);
    }

    private static void assertSpeed(Fraction expected, Train train, Map<String, Long> given, String body) {
        assertEquals(expected, speed(train, given, body));
    }

    private static Fraction speed(Train train, Map<String, Long> given, String body) {
        Map<String, Fraction> exact = new TreeMap<>();
        given.forEach((each, speed) -> exact.put(each, Fraction.of(speed)));
        return TrainSolver.speedsGiven(train, exact).orElseThrow().get(body);
    }
}
