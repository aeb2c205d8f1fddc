package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.fixtures.generator.DrawnLayouts;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;

/**
 * Rules and equations share no code beyond the facts, and must agree wherever they are asked the same. That each answer
 * holds them against each other by itself is part of what is tested: it never throws.
 */
class RulesAgainstEquationsTest {
    private static final int PAIRS = 150;
    private static final int DRAWN = 30;
    private static final int FAULTS_OF_EACH = 3;

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet"})
    void they_agree_about_every_single_fault(String id) {
        Layout layout = Bench.layout(id);
        List<Fault> faults = ToldFaults.of(layout);
        assertTrue(faults.size() > 50, () -> "there should be many faults: " + faults.size());
        faults.forEach(fault -> TwoRoads.about(layout, List.of(fault)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet"})
    void they_agree_about_pairs_of_faults_drawn_at_random(String id) {
        long seed = 8;
        Layout layout = Bench.layout(id);
        List<Fault> faults = ToldFaults.of(layout);
        Random random = new Random(seed);
        int answered = 0;
        for (int pair = 0; pair < PAIRS; pair++) {
            List<Fault> two =
                    List.of(faults.get(random.nextInt(faults.size())), faults.get(random.nextInt(faults.size())));
            answered += TwoRoads.about(layout, two) ? 1 : 0;
        }
        int most = answered;
        assertTrue(answered > PAIRS * 9 / 10, () -> "%d of %d answered, seed %d".formatted(most, PAIRS, seed));
    }

    @Test
    void they_agree_about_faults_of_drawn_layouts(@TempDir Path folder) {
        LongStream seeds = LongStream.range(0, DRAWN);
        DrawnLayouts.read(seeds, folder).forEach((drawn, layout) -> {
            List<Fault> faults = ToldFaults.of(layout);
            Random random = new Random(drawn.seed());
            for (int draw = 0; draw < FAULTS_OF_EACH; draw++) {
                Fault one = faults.get(random.nextInt(faults.size()));
                Fault other = faults.get(random.nextInt(faults.size()));
                TwoRoads.about(layout, List.of(one));
                TwoRoads.about(layout, List.of(one, other));
            }
        });
    }

    @Test
    void a_gear_seized_beside_its_own_sleeve_is_driven_through_both() {
        GearVerdict third = Bench.gear(Bench.whatIf("curlew", "third seized"), "3");
        // by the equations the two share the load, by the rules the drive goes through one of them
        assertTrue(third.motion().carrying().containsAll(TwoRoads.parts(third)), third.toString());
    }
}
