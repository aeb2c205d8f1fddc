package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Side;
import org.w3c.dom.Element;

/** The view along the shafts. */
class EndViewTest {

    static Stream<Layout> families() {
        return Boxes.families();
    }

    private static View end(Layout layout, Stance stance) {
        return Boxes.turning(layout, stance).from(View.From.END);
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyGearIsThereOnceInEveryStance(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            Picture picture = Picture.of(Drawing.of(layout, end(layout, stance)).svg());
            assertEquals(
                    layout.all(Gear.class).map(Gear::id).sorted().toList(),
                    picture.values("data-part").stream().sorted().toList(),
                    "" + stance);
            List<String> ids = picture.values("id");
            assertEquals(ids.size(), new HashSet<>(ids).size(), "" + ids);
            assertTrue(Picture.first(picture.root(), "desc").getTextContent().contains("Seen from the clutch end"));
        }
    }

    /** Wheels in mesh whose places are told touch at their pitch circles. */
    @ParameterizedTest
    @MethodSource("families")
    void pitchCirclesOfGearsInMeshTouch(Layout layout) {
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        EndView end = new EndView(layout, end(layout, Stance.NEUTRAL), plan);
        for (Mesh mesh : layout.meshes()) {
            Gear one = layout.gear(mesh.first());
            Gear other = layout.gear(mesh.second());
            boolean planets =
                    plan.planets().isPlanet(one.id()) || plan.planets().isPlanet(other.id());
            if (mesh.kind() != MeshKind.EXTERNAL || planets) {
                continue;
            }
            String from = plan.lines().of(one);
            String to = plan.lines().of(other);
            double apart = Math.hypot(end.x(from) - end.x(to), end.y(from) - end.y(to));
            // Pairs of modules and helix angles given loosely share the widest distance of their two lines.
            assertEquals(1, apart / (end.pitch(one) + end.pitch(other)), 0.04, mesh.id());
        }
    }

    /** 24 + 47 teeth of 2.5 mm on one pair of axes: 2.5 x 71 / 2 / cos(helix). */
    @Test
    void aDistanceIsThatOfModuleHelixAndTeeth() {
        Layout layout = Boxes.typed("""
                { "format": "layshaft/layout/1", "id": "tattler", "module_mm": 2.5,
                  "shafts": {
                    "input": { "along": [{ "gear": "driving", "teeth": 24, "meshes": "driven" }] },
                    "output": { "along": [{ "gear": "driven", "teeth": 47 }] }
                  } }
                """);
        Picture picture =
                Picture.of(Drawing.of(layout, end(layout, Stance.NEUTRAL)).svg());
        assertTrue(
                picture.root().getTextContent().contains("88.8 mm"),
                picture.root().getTextContent());
    }

    @Test
    void withoutAModuleNoDistanceIsTold() {
        Layout layout = Boxes.typed("""
                { "format": "layshaft/layout/1", "id": "tattler",
                  "shafts": {
                    "input": { "along": [{ "gear": "driving", "teeth": 24, "meshes": "driven" }] },
                    "output": { "along": [{ "gear": "driven", "teeth": 47 }] }
                  } }
                """);
        String says = Picture.of(Drawing.of(layout, end(layout, Stance.NEUTRAL)).svg())
                .root()
                .getTextContent();
        assertTrue(says.contains("distance not told"), says);
        assertTrue(says.contains("No module is told"), says);
        assertFalse(says.contains(" mm apart"), says);
    }

    @Test
    void wheelsTurnAtTheirSpeedsAndTheOtherWayCounterClockwise() {
        Layout curlew = Boxes.demo("curlew");
        Stance third = Stance.NEUTRAL.with("3-4-sleeve", Side.REAR);
        Picture picture = Picture.of(Drawing.of(curlew, end(curlew, third)).svg());
        Map<String, Double> expected =
                Map.of("input-gear", 1.0, "cluster-driven", -24.0 / 47, "third", 24.0 / 47 * 37 / 34);
        expected.forEach((gear, turns) -> {
            Element wheel = Picture.first(picture.part(gear), "g");
            assertEquals(turns, Double.parseDouble(wheel.getAttribute("data-turns")), 1e-9, gear);
        });
        List<String> other = picture.ofClass("other-way")
                .map(arrow -> arrow.getAttribute("data-turns-of"))
                .toList();
        assertEquals(List.of("cluster-driven"), other);
    }

    @Test
    void twoDistancesGiveThePlaceOfAThirdAxis() {
        List<Apart> apart = List.of(
                new Apart("a", "b", 30, true, false),
                new Apart("a", "c", 40, true, false),
                new Apart("b", "c", 50, true, false));
        Axes axes = new Axes("a", apart, new java.util.LinkedHashMap<>(Map.of("a", 1.0, "b", 1.0, "c", 1.0)));
        for (Apart each : apart) {
            Point one = axes.of(each.one());
            Point other = axes.of(each.other());
            assertEquals(each.mm(), Math.hypot(one.x() - other.x(), one.y() - other.y()), 1e-6);
        }
        assertTrue(axes.contradicted().isEmpty());
        assertEquals(1, axes.anyWay().size());
    }

    @Test
    void distancesThatCannotBothBeSoAreSaidToBeSo() {
        Axes axes = new Axes(
                "a",
                List.of(
                        new Apart("a", "b", 30, true, false),
                        new Apart("a", "c", 5, true, false),
                        new Apart("b", "c", 5, true, false)),
                new java.util.LinkedHashMap<>(Map.of("a", 1.0, "b", 1.0, "c", 1.0)));
        assertEquals(1, axes.contradicted().size());
    }
}
