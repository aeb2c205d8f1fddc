package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Side;

/** Layouts other than the usual. */
class OddLayoutsTest {
    private static final String HEAD = """
            { "format": "layshaft/layout/1", "id": "%s", "name": "%s", "summary": "For a test",
            """;

    /** No module anywhere; the pairs stand in another order on each shaft. */
    private static final String CROSSED = HEAD.formatted("crossed", "Crossed") + """
              "shafts": {
                "input": { "along": [
                  { "gear": "a", "teeth": 20 }, { "gear": "b", "teeth": 25 } ] },
                "output": { "along": [
                  { "gear": "low", "teeth": 35, "free": true, "meshes": "b" },
                  { "sleeve": "1-2" },
                  { "gear": "high", "teeth": 40, "free": true, "meshes": "a" } ] }
              },
              "selector": { "rails": ["1-2"] } }
            """;

    /** Two countershafts share the load, one on either side. */
    private static final String TWIN = HEAD.formatted("twin", "Twin") + """
              "module_mm": 3,
              "shafts": {
                "input": { "along": [
                  { "bearing": "input-bearing" }, { "gear": "input-gear", "teeth": 30, "meshes": ["left-driven", "right-driven"] } ] },
                "left-countershaft": { "along": [ { "gear": "left-driven", "teeth": 40 }, { "gear": "left-low", "teeth": 20 } ] },
                "right-countershaft": { "along": [ { "gear": "right-driven", "teeth": 40 }, { "gear": "right-low", "teeth": 20 } ] },
                "output": { "along": [
                  { "bearing": "pilot-bearing", "in": "input" },
                  { "sleeve": "1-2", "front": "input-gear" },
                  { "gear": "low", "teeth": 50, "free": true, "meshes": ["left-low", "right-low"] },
                  { "bearing": "output-bearing" } ] }
              },
              "selector": { "rails": ["1-2"] } }
            """;

    /** An output on which nothing sits: it does no more than leave the differential. */
    private static final String BARE = HEAD.formatted("bare", "Bare") + """
              "module_mm": 3, "clutch": false,
              "shafts": {
                "input": { "along": [ { "gear": "driving", "teeth": 30, "meshes": "driven" } ] },
                "centre": { "along": [ { "gear": "driven", "teeth": 33 } ] },
                "front-output": { "along": [] },
                "rear-output": { "along": [ { "sleeve": "lock", "front": "centre-differential", "rear": false } ] }
              },
              "differentials": [
                { "id": "centre-differential", "on": "centre", "shafts": ["front-output", "rear-output"] } ],
              "output": ["front-output", "rear-output"],
              "selector": { "rails": ["lock"] } }
            """;

    static Stream<Layout> odd() {
        return Stream.of(CROSSED, TWIN, BARE).map(Boxes::typed);
    }

    @ParameterizedTest
    @MethodSource("odd")
    void areDrawnWhole(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            Drawing drawing = Drawing.of(layout, Boxes.moving(layout, stance));
            List<String> parts = Picture.of(drawing.svg()).values("data-part");
            assertEquals(Boxes.figured(layout), new TreeSet<>(parts));
            assertEquals(Boxes.figured(layout).size(), parts.size());
        }
    }

    @Test
    void ofCrossedPairsOneIsAlignedAndTheOtherLinked() {
        Layout layout = Boxes.typed(CROSSED);
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        List<Mesh> touching = layout.meshes().stream().filter(plan::touch).toList();
        assertEquals(1, touching.size());
        List<String> linked = Picture.of(Drawing.of(layout, View.plain()).svg()).values("data-mesh");
        List<String> others = layout.meshes().stream()
                .filter(mesh -> !touching.contains(mesh))
                .map(Mesh::id)
                .toList();
        assertEquals(others, linked);
    }

    @Test
    void twinCountershaftsLieOnEitherSideAndBothCarry() {
        Layout layout = Boxes.typed(TWIN);
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        double left = plan.carrierY("left-countershaft");
        double right = plan.carrierY("right-countershaft");
        assertEquals(0, left + right, 1e-6);
        assertTrue(left != right);
        assertTrue(layout.meshes().stream().allMatch(plan::touch));
        Stance low = Stance.NEUTRAL.with("1-2-sleeve", Side.REAR);
        List<String> ways =
                Picture.of(Drawing.of(layout, Boxes.moving(layout, low)).svg()).values("data-way");
        assertTrue(ways.stream().anyMatch(way -> way.contains("left-low")), "" + ways);
        assertTrue(ways.stream().anyMatch(way -> way.contains("right-low")), "" + ways);
    }
}
