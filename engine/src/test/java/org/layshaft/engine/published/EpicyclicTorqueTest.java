package org.layshaft.engine.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.published.Figures.assertPrinted;

import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Statics;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSketch;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.MeshKind;

/** Epicyclic trains whose teeth or torques are printed in R. S. Khurmi and J. K. Gupta, Theory of Machines. */
class EpicyclicTorqueTest {
    /** E-06: KG 13.9 and SA 4.14: teeth for a sun that turns five times for one turn of the arm, the ring held. */
    @Test
    void e06TeethForARatioOfFive() {
        Train train = new TrainSketch()
                .planetary("arm", "B", 14, "C", 21, "D", 56)
                .held("D")
                .from("B", "arm");
        assertEquals(Fraction.of(5), TrainSolver.solve(train).ratio().orElseThrow());
        assertEquals(224, 4 * 56, "module times teeth, in mm");
    }

    /** E-22: KG 13.20: 100 N·m on the sun; the ring must be held with 400 N·m, the arm gives 500. */
    @Test
    void e22TheRingHoldsWhatTheArmGivesMore() {
        Train train = new TrainSketch()
                .planetary("arm", "sun", 16, "planet", 24, "ring", 64)
                .held("ring")
                .from("sun", "arm");
        Balance.Torques torques = torques(train);
        assertEquals(Fraction.of(500), torques.output().times(Fraction.of(100)));
        assertEquals(
                Fraction.of(400), heldWith(train, torques, "ring").absolute().times(Fraction.of(100)));
    }

    /**
     * E-23: KG 13.19 prints 37.15 rpm and 2692 N·m, having rounded speeds to whole turns on the way; exactly it is 37.5
     * rpm and 2666.7 N·m.
     */
    @Test
    void e23SteppedPlanetsBetweenTwoRings() {
        Train train = new TrainSketch()
                .planetary("arm", "A", 15, "B", 20, "E", 55)
                .on("planet", "B", "C")
                .meshOn("arm", MeshKind.INTERNAL, "C", 15, "D", 50)
                .held("E")
                .from("A", "D");
        Fraction ratio = TrainSolver.solve(train).ratio().orElseThrow();
        assertPrinted("37.5", Fraction.of(1000).over(ratio));
        assertPrinted("2666.7", torques(train).output().times(Fraction.of(100)));
    }

    /** E-22 again, typed as a layout: the planets on a shaft that the carrier takes round. */
    @Test
    void e22AsALayout() {
        Train train = new TrainBuilder(Boxes.typed("published", "e-22"), Changes.NONE).at(Stance.NEUTRAL);
        assertEquals(Fraction.of(500), torques(train).output().times(Fraction.of(100)));
        assertEquals(
                Fraction.of(400),
                heldWith(train, torques(train), "ring").absolute().times(Fraction.of(100)));
    }

    /**
     * E-26: KG 13.24 prints 15.468 kN·m for 7.5 kW at 500 rpm, rounded on the way; it is 15.504. That the planets E and D
     * run between A and two rings, C held and B leading out, is inferred from that value. The tooth loads printed with it
     * rest on modules that are not in the source as read.
     */
    @Test
    void e26AGreatReduction() {
        Train train = new TrainSketch()
                .planetary("arm", "A", 34, "E", 50, "C", 150)
                .on("planet", "E", "D")
                .meshOn("arm", MeshKind.INTERNAL, "D", 38, "B", 120)
                .held("C")
                .from("A", "B");
        Fraction ratio = TrainSolver.solve(train).ratio().orElseThrow();
        assertEquals(Fraction.of(1840, 17), ratio);
        assertEquals(ratio, torques(train).output());
        double inputNm = 7500 / (2 * Math.PI * 500 / 60);
        assertEquals(15.504, inputNm * ratio.toDouble() / 1000, 0.0005);
    }

    /** In every one of them the torques from outside, that of the case among them, add up to zero. */
    @Test
    void theCaseTakesTheDifference() {
        Train train = new TrainSketch()
                .planetary("arm", "sun", 16, "planet", 24, "ring", 64)
                .held("ring")
                .from("sun", "arm");
        Balance.Torques torques = torques(train);
        Fraction onCase = train.connections().stream()
                .map(connection -> torques.onCase(connection).orElseThrow())
                .reduce(Fraction.ZERO, Fraction::plus);
        assertEquals(Fraction.ONE.minus(torques.output()), onCase);
        assertEquals(heldWith(train, torques, "ring").negated(), onCase);
    }

    private static Fraction heldWith(Train train, Balance.Torques torques, String body) {
        return train.connections().stream()
                .filter(connection -> connection instanceof Connection.Held held
                        && held.body().equals(body))
                .map(held -> torques.on(held).get(body))
                .findFirst()
                .orElseThrow();
    }

    private static Balance.Torques torques(Train train) {
        return Statics.of(train).torques().orElseThrow();
    }
}
