package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.check.NormalModule;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Mesh;

/** Where sets could stand in the Curlew, by shape and kind alone. */
class PlacementsTest {
    private static final Stock STOCK = new Stock()
            .box("curlew")
            .gear("G1", 2)
            .gear("G2", 2)
            .gear("G3", 2)
            .part("SL", ComponentKind.SLEEVE, Facts.NONE)
            .part("HU", ComponentKind.HUB, Facts.NONE)
            .part("RI", ComponentKind.BLOCKING_RING, Facts.NONE)
            .part("NE", ComponentKind.NEEDLES, Facts.NONE)
            .part("BE", ComponentKind.BEARING, Facts.NONE)
            .part("SP", ComponentKind.SPEED_GEAR, Facts.NONE)
            .part("SH", ComponentKind.SHAFT, Facts.NONE)
            .part("SM", ComponentKind.SHIM, Facts.NONE)
            .set("pair", SetShape.PAIR, false, "gear", "G1", "mate", "G2")
            .set("train", SetShape.TRAIN, false, "driving", "G1", "idler", "G2", "driven", "G3")
            .set("synchroniser", SetShape.SYNCHRONISER, false, "sleeve", "SL", "hub", "HU", "rear-ring", "RI")
            .set("shaft", SetShape.SHAFT, false, "shaft", "SH", "first", "G1")
            .set("by-place", SetShape.SHAFT, false, "countershaft", "SH", "first", "G1")
            .set("wrong-role", SetShape.PAIR, false, "gear", "G1", "mate", "SL");
    private static final PartsCounter COUNTER = STOCK.counter(new NormalModule());
    private static final BuiltBox BOX = COUNTER.boxes().get("curlew");

    private static List<Placement> placements(String number) {
        return COUNTER.placements(COUNTER.catalogue().set(number).orElseThrow(), BOX);
    }

    private static Set<String> places(String number) {
        return placements(number).stream()
                .flatMap(placement -> placement.parts().keySet().stream())
                .collect(Collectors.toSet());
    }

    @Test
    void a_gear_can_stand_at_every_gear() {
        assertEquals(BOX.layout().all(Gear.class).map(Gear::id).collect(Collectors.toSet()), places("G1"));
    }

    @Test
    void a_pair_can_stand_at_every_mesh_either_way_round() {
        List<Mesh> meshes = BOX.layout().everyMesh().toList();
        assertEquals(2 * meshes.size(), placements("pair").size());
        placements("pair")
                .forEach(placement -> assertEquals(
                        1,
                        meshes.stream()
                                .filter(mesh -> placement.parts().keySet().equals(Set.of(mesh.first(), mesh.second())))
                                .count()));
    }

    @Test
    void a_train_stands_where_a_gear_meshes_with_two() {
        assertEquals(
                Set.of("cluster-reverse", "reverse-idler", "reverse"),
                placements("train").stream()
                        .filter(placement -> placement.parts().get("reverse-idler") != null
                                && placement
                                        .parts()
                                        .get("reverse-idler")
                                        .number()
                                        .equals("G2"))
                        .findFirst()
                        .orElseThrow()
                        .parts()
                        .keySet());
    }

    @Test
    void a_synchroniser_stands_at_sleeves_that_have_all_its_places() {
        assertEquals(
                Set.of(Set.of("3-4-sleeve", "3-4-hub", "third-ring"), Set.of("1-2-sleeve", "1-2-hub", "first-ring")),
                placements("synchroniser").stream()
                        .map(placement -> placement.parts().keySet())
                        .collect(Collectors.toSet()));
    }

    @Test
    void needles_stand_under_gears_and_other_bearings_do_not() {
        assertEquals(true, places("NE").contains("third-needles"));
        assertEquals(false, places("NE").contains("output-bearing"));
        assertEquals(false, places("BE").contains("third-needles"));
        assertEquals(true, places("BE").contains("output-bearing"));
    }

    @Test
    void a_set_that_names_every_place_stands_there_and_once() {
        assertEquals(1, placements("by-place").size());
        assertEquals(Set.of("countershaft", "first"), places("by-place"));
    }

    @Test
    void the_rest() {
        assertEquals(Set.of(Build.SPEED_DRIVING, Build.SPEED_DRIVEN), places("SP"));
        assertEquals(Set.of("output", "first"), places("shaft"));
        assertEquals(1, placements("shaft").size());
        assertEquals(Set.of(), places("SM"));
        assertEquals(Set.of(), places("wrong-role"));
    }
}
