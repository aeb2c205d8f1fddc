package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.Reading;

/** A box and an axle, joined by a propeller shaft. */
class JointsTest {
    private static final String BOX = """
            { "format": "layshaft/layout/1", "id": "box", "shafts": {
              "input": { "along": [{ "gear": "input-first", "teeth": 20, "meshes": "first" }] },
              "output": { "along": [{ "gear": "first", "teeth": 50, "free": true }, { "sleeve": "1" }] }
            } }""";
    private static final String AXLE = """
            { "format": "layshaft/layout/1", "id": "axle", "clutch": false,
              "shafts": { "input": { "along": [{ "gear": "pinion", "teeth": 10, "meshes": "ring-gear" }] } },
              "differential": { "ring_gear": { "teeth": 40, "crown": "left" } } }""";
    private static final String CAR = """
            { "format": "layshaft/layout/1", "id": "car", "units": { "box": "box", "rear": "axle" },
              "joins": [{ "from": "box-output", "to": "rear-input", "by": "propeller-shaft" }] }""";
    private static final Stance FIRST = Stance.NEUTRAL.with("box-1-sleeve", Side.FRONT);

    private static Layout car;

    @BeforeAll
    static void read(@TempDir Path folder) throws IOException {
        Reading reading = PackReader.check(List.of(
                Files.writeString(folder.resolve("box.json"), BOX),
                Files.writeString(folder.resolve("axle.json"), AXLE),
                Files.writeString(folder.resolve("car.json"), CAR)));
        assertEquals(List.of(), reading.findings());
        car = reading.knowledge().layout("car").orElseThrow();
    }

    @Test
    void joined_shafts_turn_as_one() {
        Train train = new TrainBuilder(car, Changes.NONE).at(FIRST);
        assertTrue(train.connections().contains(new Connection.Jointed("propeller-shaft", "box-output", "rear-input")));
        Motion motion = TrainSolver.solve(train);
        assertEquals(Outcome.DRIVES, motion.outcome());
        assertEquals(Optional.of(Fraction.of(-10, 1)), motion.ratio());
        assertEquals(motion.speedOf("box-output"), motion.speedOf("rear-input"));
    }

    @Test
    void a_joint_is_on_the_rear_piece_of_a_cut_shaft() {
        Changes cut = new Changes(Set.of(), Set.of(), Set.of(), Map.of("box-output", "box-first"), Set.of(), Set.of());
        Motion motion = TrainSolver.solve(new TrainBuilder(car, cut).at(FIRST));
        assertEquals(Outcome.DRIVES, motion.outcome());
    }
}
