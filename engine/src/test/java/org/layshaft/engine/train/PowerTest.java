package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.MeshKind;

class PowerTest {
    @Test
    void aMeshTakesFromTheDriverAndGivesToTheDriven() {
        Power.Flow flow = Power.of(new TrainSketch().mesh("A", 20, "B", 60).from("A", "B"))
                .flatMap(power -> power.through("mesh A/B"))
                .orElseThrow();
        assertEquals(Map.of("A", Fraction.ONE), flow.taken());
        assertEquals(Map.of("B", Fraction.ONE), flow.given());
    }

    @Test
    void straightThroughTheCountershaftPassesNothing() {
        Train direct =
                new TrainSketch().mesh("A", 20, "B", 60).tied("A", "output").from("A", "output");
        assertEquals(Optional.empty(), Power.of(direct).orElseThrow().through("mesh A/B"));
    }

    /** In a train without branches nothing comes back. */
    @Test
    void alongOneLineNothingRecirculates() {
        Train line = new TrainSketch()
                .mesh("A", 20, "B", 60)
                .on("middle", "B", "C")
                .mesh("C", 20, "D", 40)
                .from("A", "D");
        assertEquals(List.of(), Power.of(line).orElseThrow().recirculating());
    }

    /**
     * The input turns the sun, and by way of a pair the ring as well, the carrier leading out. Where sun and ring turn
     * the same way both bring power; where the pair turns the ring backward, ring and pair take some back to the input,
     * and more than all of it goes through the sun.
     */
    @Test
    void aRingThatRunsBackwardSendsPowerBack() {
        Power forward = Power.of(split("chain")).orElseThrow();
        assertEquals(List.of(), forward.recirculating());
        Power backward = Power.of(split("pair")).orElseThrow();
        assertTrue(backward.recirculating().stream()
                .anyMatch(flow -> flow.connection().id().equals("mesh input-wheel/ring-wheel")));
        Fraction most = backward.recirculating().stream()
                .map(Power.Flow::power)
                .max(Fraction::compareTo)
                .orElseThrow();
        assertTrue(most.compareTo(Fraction.ONE) > 0, most::toString);
    }

    private static Train split(String kind) {
        TrainSketch sketch = new TrainSketch()
                .planetary("carrier", "sun", 24, "planet", 24, "ring", 72)
                .tied("input", "sun", "input-wheel")
                .tied("ring", "ring-wheel");
        return (kind.equals("pair")
                        ? sketch.mesh("input-wheel", 20, "ring-wheel", 100)
                        : sketch.mesh(MeshKind.CHAIN, "input-wheel", 20, "ring-wheel", 100))
                .from("input", "carrier");
    }
}
