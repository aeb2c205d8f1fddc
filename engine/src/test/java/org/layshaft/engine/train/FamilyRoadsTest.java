package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.fixtures.generator.DrawnLayouts;
import org.layshaft.fixtures.generator.DrivelineGenerator;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/** Exact solver against floating point, and certificates, where planets, two countershafts or several outputs turn. */
class FamilyRoadsTest {
    private static final int STANCES = 12;

    static Stream<Layout> everyLayout() {
        return Boxes.every().stream();
    }

    @ParameterizedTest
    @MethodSource("everyLayout")
    void soundAndWithOneChange(Layout layout) {
        SplittableRandom random = new SplittableRandom(layout.id().hashCode());
        tryStances(layout, Changes.NONE, random);
        List<Changes> single = SomeChanges.single(layout);
        for (int times = 0; times < STANCES && !single.isEmpty(); times++) {
            tryStances(layout, single.get(random.nextInt(single.size())), random);
        }
    }

    @Test
    void drawnDrivelines(@TempDir Path folder) {
        var layouts = DrawnLayouts.read(LongStream.range(0, 120), DrivelineGenerator::draw, folder);
        assertTrue(layouts.size() > 100);
        layouts.forEach((drawn, layout) -> tryStances(layout, Changes.NONE, new SplittableRandom(drawn.seed())));
    }

    private static void tryStances(Layout layout, Changes changes, SplittableRandom random) {
        TrainBuilder builder = new TrainBuilder(layout, changes);
        for (int times = 0; times < STANCES; times++) {
            Stance stance = stance(layout, random);
            Roads roads = new Roads(builder.at(stance), layout.id() + " " + stance + " " + changes);
            roads.assertFloatingAgrees();
            roads.assertCertified();
        }
    }

    /** Each member in neutral or to a side, so that a few of many are engaged. */
    private static Stance stance(Layout layout, SplittableRandom random) {
        TreeMap<String, Side> engaged = new TreeMap<>();
        for (ShiftMember member : layout.members()) {
            List<Side> sides = List.copyOf(member.sides().keySet());
            if (!sides.isEmpty() && random.nextInt(3) == 0) {
                engaged.put(member.part(), sides.get(random.nextInt(sides.size())));
            }
        }
        return new Stance(engaged);
    }
}
