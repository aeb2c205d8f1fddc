package org.layshaft.engine.published;

import static org.layshaft.engine.published.Figures.assertPrinted;

import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.TrainSketch;
import org.layshaft.engine.train.TrainSolver;

/**
 * The four-speed epicyclic box with a brake for each gear. Set 3 gives the output; the ring of each set is joined to the
 * carrier of the one before, and a fourth set reverses. How the sets are joined is inferred from the printed ratios.
 */
class ChainedBrakeBoxTest {
    /** M-04, E-20: U. C. Jindal, Machine Design, example 29-1, p. 749. */
    private static final int[][] JINDAL = {{16, 64}, {18, 63}, {20, 70}, {25, 50}};

    /** M-05: T. Bevan, The Theory of Machines, example 11.10, p. 403, who lists the set of the output first. */
    private static final int[][] BEVAN = {{23, 61}, {24, 72}, {26, 70}, {31, 71}};

    @Test
    void m04FourSpeeds() {
        assertPrinted("4.5", ratio(forward(JINDAL).held("ring-3")));
        assertPrinted("1.471", ratio(forward(JINDAL).held("sun-1")));
        assertPrinted("-6.000", ratio(reverse(JINDAL)));
    }

    /** An intermediate, -0.2857, is printed in its place; the ratio is 2.531. */
    @Test
    void m04SecondIsNotTheIntermediate() {
        assertPrinted("2.531", ratio(forward(JINDAL).held("ring-2")));
    }

    @Test
    void m04TopIsDirect() {
        assertPrinted("1", ratio(forward(JINDAL).tied("sun-3", "sun-1")));
    }

    /** 1.47 is printed, from a division of whole numbers; it is 1.490. */
    @Test
    void m05Third() {
        assertPrinted("1.490", ratio(forward(BEVAN).held("sun-1")));
    }

    private static TrainSketch forward(int[][] teeth) {
        return sets(teeth, 3)
                .tied("input", "sun-2", "sun-3")
                .tied("ring-3", "carrier-2")
                .tied("carrier-2", "ring-1")
                .tied("ring-2", "carrier-1")
                .tied("carrier-3", "output");
    }

    private static TrainSketch reverse(int[][] teeth) {
        return forward(teeth)
                .planetary("carrier-4", "sun-4", teeth[3][0], "planet-4", 10, "ring-4", teeth[3][1])
                .tied("ring-3", "sun-4")
                .tied("carrier-4", "output")
                .held("ring-4");
    }

    private static TrainSketch sets(int[][] teeth, int count) {
        TrainSketch sketch = new TrainSketch();
        for (int set = 1; set <= count; set++) {
            sketch.planetary(
                    "carrier-" + set,
                    "sun-" + set,
                    teeth[set - 1][0],
                    "planet-" + set,
                    20,
                    "ring-" + set,
                    teeth[set - 1][1]);
        }
        return sketch;
    }

    private static Fraction ratio(TrainSketch sketch) {
        return TrainSolver.solve(sketch.from("input", "output")).ratio().orElseThrow();
    }
}
