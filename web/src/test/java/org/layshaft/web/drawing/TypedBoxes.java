package org.layshaft.web.drawing;

import java.util.stream.Stream;
import org.layshaft.kb.layout.Layout;

/** Layouts typed for tests of what no demo layout has. */
final class TypedBoxes {
    private static final String HEAD = """
            { "format": "layshaft/layout/1", "id": "%s", "name": "%s", "summary": "For a test", "module_mm": 2,
            """;

    /** Double planets: the inner ones mesh with the sun, the outer ones with the ring, and each with the other. */
    private static final String DUNLIN = HEAD.formatted("dunlin", "Dunlin") + """
              "shafts": {
                "input": { "along": [ { "bearing": "input-bearing" }, { "gear": "sun", "teeth": 30, "meshes": "inner-planet" } ] },
                "inner-spindle": { "carried_by": "output", "count": 3, "along": [
                  { "gear": "inner-planet", "teeth": 18, "free": true, "meshes": "outer-planet" } ] },
                "outer-spindle": { "carried_by": "output", "count": 3, "along": [
                  { "gear": "outer-planet", "teeth": 19, "free": true, "meshes": "ring" } ] },
                "ring-seat": { "held": true, "along": [ { "gear": "ring", "teeth": 84, "internal": true, "free": false } ] },
                "output": { "along": [ { "bearing": "output-bearing" } ] }
              } }
            """;

    /** A box between two axles: a shaft to the front axle and one to the rear, and four wheels. */
    private static final String WIGEON = HEAD.formatted("wigeon", "Wigeon") + """
              "shafts": {
                "input": { "along": [ { "bearing": "input-bearing" }, { "gear": "input-gear", "teeth": 25, "meshes": "drive-gear" } ] },
                "drive": { "along": [
                  { "gear": "front-pinion", "teeth": 9, "meshes": "front-ring" },
                  { "bearing": "drive-front-bearing" },
                  { "gear": "drive-gear", "teeth": 40 },
                  { "bearing": "drive-rear-bearing" },
                  { "gear": "rear-pinion", "teeth": 9, "meshes": "rear-ring" } ] }
              },
              "differentials": [
                { "id": "front-differential", "half_shafts": ["front-left", "front-right"],
                  "ring_gear": { "id": "front-ring", "teeth": 37, "crown": "left" } },
                { "id": "rear-differential", "half_shafts": ["rear-left", "rear-right"],
                  "ring_gear": { "id": "rear-ring", "teeth": 37, "crown": "left" } }
              ] }
            """;

    private TypedBoxes() {}

    static Layout dunlin() {
        return Boxes.typed(DUNLIN);
    }

    static Layout wigeon() {
        return Boxes.typed(WIGEON);
    }

    static Stream<Layout> all() {
        return Stream.of(dunlin(), wigeon());
    }
}
