package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.engine.api.Stance;
import org.layshaft.fixtures.generator.DrawnLayouts;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Shaft;

/** What holds of the three demo boxes holds of any that the generator draws. */
class DrawnLayoutsTest {
    private static final LongStream SEEDS = LongStream.range(0, 25);
    private static Collection<Layout> layouts;

    @BeforeAll
    static void read(@TempDir Path folder) {
        layouts = DrawnLayouts.read(SEEDS, folder).values();
    }

    @Test
    void everyPartIsDrawnOnce() {
        for (Layout layout : layouts) {
            List<String> drawn = Picture.of(Drawing.of(layout, Boxes.moving(layout, Stance.NEUTRAL))
                            .svg())
                    .values("data-part");
            assertEquals(Boxes.figured(layout), new TreeSet<>(drawn), layout.id());
            assertEquals(Boxes.figured(layout).size(), drawn.size(), layout.id());
        }
    }

    @Test
    void columnsAndOrderAreKeptAndNothingOverlapsOnALine() {
        for (Layout layout : layouts) {
            for (Stance stance : Boxes.each(layout)) {
                Plan plan = new Plan(layout, stance);
                for (Mesh mesh : layout.meshes()) {
                    assertEquals(plan.x(mesh.first()), plan.x(mesh.second()), 1e-6, layout.id() + " " + mesh.id());
                }
                layout.all(Shaft.class).forEach(shaft -> inOrder(plan, shaft));
                plan.lines().all().forEach(line -> apart(plan, plan.lines().gears(line)));
            }
        }
    }

    @Test
    void aWayOfPowerIsDrawnWheneverItDrives() {
        for (Layout layout : layouts) {
            for (Stance stance : Boxes.each(layout)) {
                var motion = Boxes.motion(layout, stance);
                PowerPath path = PowerPath.of(new Plan(layout, stance), motion);
                assertTrue(
                        motion.carrying().stream()
                                .filter(layout.parts()::containsKey)
                                .allMatch(path::passes),
                        layout.id() + " " + stance);
            }
        }
    }

    private static void inOrder(Plan plan, Shaft shaft) {
        for (int at = 1; at < shaft.along().size(); at++) {
            String before = shaft.along().get(at - 1);
            String behind = shaft.along().get(at);
            assertTrue(plan.restX(before) < plan.restX(behind), before + " before " + behind);
        }
    }

    private static void apart(Plan plan, List<Gear> gears) {
        for (Gear one : gears) {
            for (Gear other : gears) {
                double shared = plan.gearBox(one.id()).shared(plan.gearBox(other.id()));
                assertTrue(one == other || shared == 0, one.id() + " on " + other.id());
            }
        }
    }
}
