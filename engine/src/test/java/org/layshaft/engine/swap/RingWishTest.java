package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.PackReader;

/** A wish that is met by a gear inside a ring. */
class RingWishTest {
    private static final String JACANA = """
            { "format": "layshaft/layout/1", "id": "jacana", "name": "Jacana", "module_mm": 3, "shafts": {
              "input": { "along": [{ "gear": "pinion", "teeth": 20, "meshes": "ring" }] },
              "output": { "along": [{ "gear": "ring", "teeth": 60, "internal": true }] }
            } }""";

    @Test
    void allThatBruteForceFindsInARing(@TempDir Path folder) throws IOException {
        Layout jacana = PackReader.check(List.of(Files.writeString(folder.resolve("jacana.json"), JACANA)))
                .knowledge()
                .layout("jacana")
                .orElseThrow();
        GearRules rules = new GearRules(OptionalDouble.of(60), List.of(2.5, 3.0, 3.5, 4.0), 0, 25, -0.3, 0.6, 15, 90);
        BruteForce force = new BruteForce(rules, 20, true);
        Set<String> expected = new HashSet<>();
        for (double module : rules.modulesMm()) {
            for (int pinion = 15; pinion <= 90; pinion++) {
                for (int ring = pinion + 1; ring <= 90; ring++) {
                    if (Math.abs(ring / 2.8 / pinion - 1) <= 0.03 && force.suits(module, pinion, ring)) {
                        expected.add(module + " " + pinion + "/" + ring);
                    }
                }
            }
        }
        String gear = Swaps.REASONER.box(jacana).gears().get(0).name();
        List<Proposal> found = new WishSolver(jacana, Swaps.REASONER)
                .solve(new Wish.RatioOf(gear, Fraction.of(28, 10), Fraction.of(3, 100)), rules)
                .value()
                .orElseThrow();
        assertFalse(expected.isEmpty());
        assertEquals(
                expected,
                found.stream()
                        .map(each -> each.moduleMm() + " " + each.firstTeeth() + "/" + each.secondTeeth())
                        .collect(Collectors.toSet()));
        for (Proposal each : found) {
            assertEquals(0, each.cut(0.3).circumferentialBacklashMm(), 1e-9);
            assertEquals(Fraction.of(each.secondTeeth(), each.firstTeeth()), each.ratio());
        }
    }
}
