package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.fixtures.generator.DesignedGear;
import org.layshaft.fixtures.generator.DrawnLayout;
import org.layshaft.fixtures.generator.DrawnLayouts;
import org.layshaft.fixtures.generator.DrivelineGenerator;
import org.layshaft.kb.layout.Layout;

/** Drivelines drawn at random: each gear is the product of its sections, and neutral drives nothing. */
class DrawnDrivelinesTest {
    private static Map<DrawnLayout, Layout> layouts;

    @BeforeAll
    static void draw(@TempDir Path folder) {
        layouts = DrawnLayouts.read(LongStream.range(0, 600), DrivelineGenerator::draw, folder);
    }

    @Test
    void everyDesignedGearDrivesAtItsDesignedRatio() {
        layouts.forEach((drawn, layout) -> {
            TrainBuilder builder = new TrainBuilder(layout, Changes.NONE);
            for (DesignedGear gear : drawn.gears()) {
                assertEquals(
                        Optional.of(Fraction.of(gear.inputTurns(), gear.outputTurns())),
                        TrainSolver.solve(builder.at(new Stance(gear.engaged())))
                                .ratio(),
                        () -> "seed " + drawn.seed() + " " + gear);
            }
        });
    }

    @Test
    void withNothingEngagedNothingDrives() {
        layouts.forEach((drawn, layout) -> assertEquals(
                Outcome.NEUTRAL,
                TrainSolver.solve(new TrainBuilder(layout, Changes.NONE).at(Stance.NEUTRAL))
                        .outcome(),
                () -> "seed " + drawn.seed()));
    }
}
