package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.fixtures.generator.DesignedGear;
import org.layshaft.fixtures.generator.DrawnLayout;
import org.layshaft.fixtures.generator.DrawnLayouts;
import org.layshaft.kb.layout.Layout;

/** Layouts drawn at random: the ratios they were made to have, and all roads in sound and in faulted stances. */
class DrawnLayoutsTest {
    private static final long LAYOUTS = 2000;

    /** Layouts with no more stances than this are tried in all of them, others in as many drawn ones. */
    private static final int MOST_STANCES = 6;

    /** One stance in so many is also solved in floating point and certified, which costs ten times as much. */
    private static final int ALL_ROADS_ONE_IN = 12;

    private static Map<DrawnLayout, Layout> layouts;

    @BeforeAll
    static void draw(@TempDir Path folder) {
        layouts = DrawnLayouts.read(LongStream.range(0, LAYOUTS), folder);
    }

    @Test
    void everyDesignedGearDrivesAtItsDesignedRatio() {
        layouts.forEach((drawn, layout) -> {
            TrainBuilder builder = new TrainBuilder(layout, Changes.NONE);
            for (DesignedGear gear : drawn.gears()) {
                Train train = builder.at(new Stance(gear.engaged()));
                assertEquals(
                        Optional.of(Fraction.of(gear.inputTurns(), gear.outputTurns())),
                        TrainSolver.solve(train).ratio(),
                        () -> "seed " + drawn.seed() + " " + gear);
            }
        });
    }

    @Test
    void soundInAnyStance() {
        layouts.forEach((drawn, layout) -> tryStances(drawn, layout, Changes.NONE));
    }

    @Test
    void withOneChangeOrTwo() {
        layouts.forEach((drawn, layout) -> {
            SplittableRandom random = new SplittableRandom(drawn.seed());
            List<Changes> single = SomeChanges.single(layout);
            Changes one = single.get(random.nextInt(single.size()));
            Changes other = single.get(random.nextInt(single.size()));
            tryStances(drawn, layout, random.nextBoolean() ? one : SomeChanges.both(one, other));
        });
    }

    private static void tryStances(DrawnLayout drawn, Layout layout, Changes changes) {
        SplittableRandom random = new SplittableRandom(drawn.seed());
        TrainBuilder builder = new TrainBuilder(layout, changes);
        for (Stance stance : stances(layout, random)) {
            Roads roads = new Roads(builder.at(stance), "seed " + drawn.seed() + " " + stance + " " + changes);
            roads.assertGraphAgrees();
            if (random.nextInt(ALL_ROADS_ONE_IN) == 0) {
                roads.assertFloatingAgrees();
                roads.assertCertified();
            }
        }
    }

    private static List<Stance> stances(Layout layout, SplittableRandom random) {
        List<Stance> stances = new ArrayList<>(Stances.all(layout));
        while (stances.size() > MOST_STANCES) {
            stances.remove(random.nextInt(stances.size()));
        }
        return stances;
    }
}
