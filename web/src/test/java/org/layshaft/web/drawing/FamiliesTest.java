package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Shaft;

/** What holds of the drawing of every family. */
class FamiliesTest {

    static Stream<Layout> families() {
        return Stream.concat(Boxes.families(), TypedBoxes.all());
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyPartIsDrawnOnce(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            List<String> drawn = Picture.of(
                            Drawing.of(layout, Boxes.turning(layout, stance)).svg())
                    .values("data-part");
            assertEquals(Boxes.figured(layout), new TreeSet<>(drawn), "" + stance);
            assertEquals(Boxes.figured(layout).size(), drawn.size(), "" + stance);
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void gearsInMeshTouchOrAreLinked(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            Plan plan = new Plan(layout, stance);
            TreeSet<String> linked = new TreeSet<>(
                    Picture.of(Drawing.of(layout, Boxes.turning(layout, stance)).svg())
                            .values("data-mesh"));
            TreeSet<String> apart = plan.made().stream()
                    .filter(mesh -> !plan.touch(mesh))
                    .map(Mesh::id)
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(apart, linked, "" + stance);
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void aRingIsAroundItsPlanetsAndTheseAroundTheSun(Layout layout) {
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        plan.planets()
                .spindles()
                .forEach(spindle -> plan.planets().meshesOf(spindle).forEach(mesh -> {
                    String planet = plan.planets().isPlanet(mesh.first()) ? mesh.first() : mesh.second();
                    String mate = mesh.other(planet);
                    double out = Math.abs(plan.gearY(planet) - plan.gearY(mate));
                    boolean ring = layout.gear(mate).form() == GearForm.INTERNAL;
                    double touching =
                            ring ? plan.radius(mate) - plan.radius(planet) : plan.radius(mate) + plan.radius(planet);
                    assertEquals(touching, out, 0.5, mesh.id());
                }));
    }

    @ParameterizedTest
    @MethodSource("families")
    void gearsOnOneLineHideEachOtherInNoStance(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            Plan plan = new Plan(layout, stance);
            for (String line : plan.lines().all()) {
                List<Gear> gears = plan.lines().gears(line);
                for (Gear one : gears) {
                    for (Gear other : gears) {
                        boolean nested =
                                plan.planets().isInSet(one) && plan.planets().isInSet(other);
                        double shared = plan.gearBox(one.id()).shared(plan.gearBox(other.id()));
                        assertTrue(
                                one == other || nested || shared == 0, one.id() + " on " + other.id() + " " + stance);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void orderAlongEachShaftIsKept(Layout layout) {
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        layout.all(Shaft.class).forEach(shaft -> {
            for (int at = 1; at < shaft.along().size(); at++) {
                String before = shaft.along().get(at - 1);
                String behind = shaft.along().get(at);
                assertTrue(plan.x(before) < plan.x(behind), before + " before " + behind);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("families")
    void namesKeepClearOfEachOther(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            List<Name> names = Name.all(Drawing.of(layout, Boxes.turning(layout, stance)));
            for (Name one : names) {
                for (Name other : names) {
                    assertTrue(
                            one == other || one.box().grown(-1).shared(other.box()) == 0,
                            one + " on " + other + " " + stance);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void gearsThatDoNotMeshKeepClearOfEachOther(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            Plan plan = new Plan(layout, stance);
            List<Gear> gears = layout.all(Gear.class)
                    .filter(gear -> !plan.planets().isInSet(gear))
                    .filter(gear -> gear.form() != GearForm.BEVEL)
                    .toList();
            for (Gear one : gears) {
                for (Gear other : gears) {
                    Box box = plan.gearBox(one.id()).grown(-2);
                    boolean mesh = layout.everyMesh().anyMatch(pair -> pair.joins(one.id()) && pair.joins(other.id()));
                    assertTrue(
                            one == other || mesh || box.shared(plan.gearBox(other.id())) == 0,
                            one.id() + " on " + other.id() + " " + stance);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyShaftThatTurnsTellsItsSense(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            var motion = Boxes.solved(layout, stance);
            Picture picture =
                    Picture.of(Drawing.of(layout, Boxes.turning(layout, stance)).svg());
            List<String> turning = layout.all(Shaft.class)
                    .filter(shaft -> shaft.carriedBy().isEmpty())
                    .map(Shaft::id)
                    .filter(shaft -> motion.speedOf(shaft)
                            .filter(speed -> !speed.isZero())
                            .isPresent())
                    .toList();
            assertTrue(picture.values("data-turns").containsAll(turning), turning + " " + stance);
        }
    }
}
