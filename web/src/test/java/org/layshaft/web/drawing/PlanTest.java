package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Shaft;

class PlanTest {
    private static final double EXACTLY = 1e-6;

    static Stream<Layout> demos() {
        return Boxes.demos();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void pitchCirclesOfShaftsThatTurnTouch(Layout layout) {
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        List<Mesh> between = layout.meshes().stream()
                .filter(mesh -> !offThePlane(plan, mesh.first()) && !offThePlane(plan, mesh.second()))
                .toList();
        assertTrue(between.size() >= 3);
        for (Mesh mesh : between) {
            double apart = Math.abs(plan.gearY(mesh.first()) - plan.gearY(mesh.second()));
            assertEquals(plan.radius(mesh.first()) + plan.radius(mesh.second()), apart, EXACTLY, mesh.id());
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void radiiGoWithTeeth(Layout layout) {
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        for (Mesh mesh : layout.meshes()) {
            Gear first = layout.gear(mesh.first());
            Gear second = layout.gear(mesh.second());
            assertEquals(
                    (double) first.teeth() / second.teeth(),
                    plan.radius(first.id()) / plan.radius(second.id()),
                    EXACTLY,
                    mesh.id());
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void gearsInMeshShareAColumn(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            Plan plan = new Plan(layout, stance);
            assertTrue(plan.made().containsAll(layout.meshes()));
            for (Mesh mesh : plan.made()) {
                assertEquals(plan.x(mesh.first()), plan.x(mesh.second()), EXACTLY, mesh.id());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
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
    @MethodSource("demos")
    void gearsOnOneLineDoNotOverlapInAnyStance(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            Plan plan = new Plan(layout, stance);
            for (String line : plan.lines().all()) {
                List<Gear> gears = plan.lines().gears(line);
                for (Gear one : gears) {
                    for (Gear other : gears) {
                        double shared = plan.gearBox(one.id()).shared(plan.gearBox(other.id()));
                        assertTrue(one == other || shared == 0, one.id() + " on " + other.id() + " " + stance);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aGearThatMeshesWithNoneOfThemHidesNoGear(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            Plan plan = new Plan(layout, stance);
            layout.all(Gear.class)
                    .filter(gear -> offThePlane(plan, gear.id()))
                    .forEach(idler -> layout.all(Gear.class)
                            .filter(gear -> gear != idler)
                            .forEach(gear -> assertEquals(
                                    0, plan.gearBox(idler.id()).grown(-2).shared(plan.gearBox(gear.id())), gear.id())));
        }
    }

    @Test
    void coaxialShaftsShareALine() {
        Layout layout = Boxes.demo("curlew");
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        assertEquals(plan.carrierY("input"), plan.carrierY("output"));
        assertTrue(plan.carrierY("countershaft") > plan.carrierY("output"));
        assertEquals(3, plan.lines().all().size());
    }

    @Test
    void transaxleLiesInputOverOutputOverDifferential() {
        Plan plan = new Plan(Boxes.demo("plover"), Stance.NEUTRAL);
        assertTrue(plan.carrierY("input") < plan.carrierY("output"));
        assertTrue(plan.carrierY("output") < plan.carrierY("differential"));
    }

    private static boolean offThePlane(Plan plan, String gear) {
        return plan.lines().held(plan.lines().of(plan.layout().gear(gear)));
    }
}
