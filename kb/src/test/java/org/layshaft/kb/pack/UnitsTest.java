package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.testing.Marked;

/** A car of box, transfer box and one kind of axle twice, and a rig that holds the whole car as one unit. */
class UnitsTest {
    private static final Reading READING = PackReader.check(List.of(Marked.resource("joined-pack")));
    private static final Layout CAR = the("car");
    private static final Layout RIG = the("rig");

    @Test
    void every_part_of_a_unit_has_its_name_before_its_own() {
        for (String unit : List.of("box", "transfer", "front", "rear")) {
            Layout own = the(unit.equals("front") || unit.equals("rear") ? "axle" : unit);
            assertEquals(
                    own.parts().values().stream()
                            .filter(part ->
                                    !(part instanceof Clutch || part instanceof Interlock || isAroundTheWhole(part)))
                            .map(part -> unit + "-" + part.id())
                            .sorted()
                            .toList(),
                    CAR.parts().values().stream()
                            .filter(part -> part.id().startsWith(unit + "-"))
                            .filter(part ->
                                    !(part instanceof Joint || part instanceof Interlock || isAroundTheWhole(part)))
                            .map(Part::id)
                            .sorted()
                            .toList());
        }
        assertEquals("front ring gear", CAR.gear("front-ring-gear").name());
        assertEquals("box lower sleeve", CAR.the(Part.class, "box-1-2-sleeve").name());
        assertEquals("box 3 fork", CAR.the(Part.class, "box-3-fork").name());
        assertEquals(
                "front left wheel",
                CAR.the(HalfShaft.class, "front-left-half-shaft").wheel());
    }

    @Test
    void a_part_may_be_called_without_its_unit_where_no_other_is_meant() {
        assertEquals(List.of("first gear"), CAR.gear("box-first").also());
        assertEquals(
                List.of("box bottom fork", "lower fork"),
                CAR.the(Part.class, "box-1-2-fork").also());
        assertEquals(List.of(), CAR.gear("front-ring-gear").also());
        assertEquals(List.of("rear crown"), CAR.gear("rear-ring-gear").also());
        Part interlock = CAR.the(Part.class, "box-interlock");
        assertEquals("box interlock, [interlock]", interlock.name() + ", " + interlock.also());
    }

    @Test
    void what_a_unit_says_of_its_parts_holds_in_the_whole() {
        assertEquals(
                Map.of(
                        Side.FRONT,
                        new Engagement.Couples(
                                "box-input-gear",
                                "box-input-gear-clutching-teeth",
                                Optional.of("box-input-gear-ring"))),
                CAR.member("box-3-sleeve").sides());
        assertEquals(
                Map.of(
                        Side.REAR,
                        new Engagement.Meshes(List.of(
                                new Mesh("box-idler", "box-cluster-reverse"), new Mesh("box-idler", "box-reverse")))),
                CAR.member("box-idler").sides());
        assertEquals(
                List.of("front-pinion/front-ring-gear", "rear-pinion/rear-ring-gear"),
                CAR.meshes().stream()
                        .filter(mesh -> mesh.kind() == MeshKind.BEVEL)
                        .map(Mesh::id)
                        .toList());
        assertEquals(
                Optional.of("front-ring-gear"),
                CAR.the(Differential.class, "front-differential").ringGear());
        assertEquals(
                "box interlock plunger between the box 1-2 and box R rails",
                CAR.the(InterlockPiece.class, "box-interlock-plunger-2").name());
    }

    @Test
    void the_drive_enters_by_the_first_unit_and_leaves_where_nothing_is_joined() {
        assertEquals("box-input", CAR.input());
        assertEquals(
                List.of(
                        "front-left-half-shaft",
                        "front-right-half-shaft",
                        "rear-left-half-shaft",
                        "rear-right-half-shaft"),
                CAR.outputs());
        assertEquals(List.of("transfer-winch-shaft"), CAR.takeOffs());
    }

    @Test
    void a_joint_is_a_part_between_two_shafts() {
        assertEquals(
                List.of(
                        "box-output-joint: box output joint, box-output to transfer-drop-shaft",
                        "front-propeller-shaft: front propeller shaft, transfer-to-front to front-input",
                        "rear-propeller-shaft: rear prop, transfer-to-rear to rear-input"),
                CAR.all(Joint.class).map(UnitsTest::told).toList());
        assertEquals(
                List.of("tail shaft"),
                CAR.the(Joint.class, "rear-propeller-shaft").also());
    }

    @Test
    void the_gear_lever_is_that_of_the_first_unit_and_the_others_are_levers_of_their_own() {
        assertEquals(
                List.of("gear: gear lever", "transfer: transfer lever", "transfer-axle: transfer axle"),
                CAR.levers().stream()
                        .map(lever -> lever.id() + ": " + lever.name())
                        .toList());
        assertEquals(
                List.of("box-3-rail", "box-1-2-rail", "box-R-rail"), CAR.gate().planes());
        assertEquals(
                List.of(Optional.of("high"), Optional.of("low")),
                CAR.levers().get(1).places().stream().map(Lever.Place::called).toList());
    }

    @Test
    void only_the_clutch_of_the_first_unit_and_no_printed_ratio_of_a_unit_are_kept() {
        List<Clutch> clutches = CAR.all(Clutch.class).toList();
        assertEquals(1, clutches.size());
        Clutch clutch = clutches.get(0);
        assertEquals(
                "clutch: plate clutch, [dry clutch], box-input",
                "%s: %s, %s, %s".formatted(clutch.id(), clutch.name(), clutch.also(), clutch.drives()));
        assertEquals(Map.of("1 high two-wheel", new BigDecimal("16.4")), CAR.printedRatios());
    }

    @Test
    void a_whole_may_be_a_unit_and_have_parts_of_its_own() {
        assertEquals(List.of(), RIG.all(Clutch.class).toList());
        assertEquals("motor", RIG.input());
        assertEquals(List.of("car-rear-left-half-shaft", "car-rear-right-half-shaft"), RIG.outputs());
        assertEquals("coupling: coupling, spindle-shaft to car-box-input", told(RIG.the(Joint.class, "coupling")));
        assertEquals(
                "car-box-output-joint: car box output joint, car-box-output to car-transfer-drop-shaft",
                told(RIG.the(Joint.class, "car-box-output-joint")));
        assertEquals(
                List.of("gear", "car-transfer", "car-transfer-axle", "brake"),
                RIG.levers().stream().map(Lever::id).toList());
        assertEquals(Map.of(), RIG.printedRatios());
        assertEquals(CAR.all(Shaft.class).count() + 3, RIG.all(Shaft.class).count());
    }

    @Test
    void all_of_it_is_sound() {
        assertEquals(List.of(), READING.findings());
    }

    /** Oil, mountings, what is between hand and rails: a whole has its own, and those of its units are not taken over. */
    private static boolean isAroundTheWhole(Part part) {
        return part instanceof Fitting fitting
                && !Set.of(PartKind.KEYS, PartKind.THRUST_WASHER).contains(fitting.kind());
    }

    private static String told(Joint joint) {
        return "%s: %s, %s to %s".formatted(joint.id(), joint.name(), joint.from(), joint.to());
    }

    private static Layout the(String id) {
        return READING.knowledge().layout(id).orElseThrow(() -> new AssertionError(READING.findings()));
    }
}
