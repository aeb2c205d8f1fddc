package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Stances;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** Forces and thrusts of whole boxes; what is expected is reckoned by hand, from torque over radius. */
class BoxForcesTest {
    private static final Layout PRATINCOLE = Boxes.typed("teeth", "pratincole");
    private static final Stance FIRST = Stance.NEUTRAL.with("1-2-sleeve", Side.REAR);
    private static final Stance SECOND = Stance.NEUTRAL.with("1-2-sleeve", Side.FRONT);
    private static final Stance REVERSE = Stance.NEUTRAL.with("R-sleeve", Side.FRONT);
    private static final Pattern NOT_TOLD = Pattern.compile(
            "(the hand|the face width|the module|the angle between the shafts|the end of its shaft|the spiral angles).*");
    /** Thrust in N of 100 N·m on one tooth-count: 2 T tan b/d with d = m z/cos b. */
    private static final double PER_TOOTH = 2 * 100_000 * Math.sin(Math.toRadians(22)) / 2.5;

    @Test
    void onlyWhatCarriesTorqueIsLoaded() {
        assertEquals(
                List.of("input-gear>cluster-driven", "cluster-first>first"),
                forces(PRATINCOLE, FIRST, 100).meshes().stream()
                        .map(mesh -> mesh.driver() + ">" + mesh.driven())
                        .toList());
        assertEquals(
                List.of("cluster-driven>input-gear", "first>cluster-first"),
                forces(PRATINCOLE, FIRST, -100).meshes().stream()
                        .map(mesh -> mesh.driver() + ">" + mesh.driven())
                        .toList());
        assertEquals(Optional.empty(), BoxForces.of(PRATINCOLE, train(PRATINCOLE, Stance.NEUTRAL), input(100)));
    }

    /**
     * The left-hand input gear, clockwise, is thrust to the front and its mate to the rear. The countershaft carries 184
     * N·m back; its left-hand first gear, driving anticlockwise, is thrust to the rear too, its right-hand second to the
     * front.
     */
    @Test
    void thrustsOfTheCountershaftAddUpOrOppose() {
        double driven = PER_TOOTH / 25;
        double onFirst = PER_TOOTH * 46 / 25 / 20;
        double onSecond = PER_TOOTH * 46 / 25 / 30;
        assertThrust(driven, Side.FRONT, thrust(FIRST, 100, "input"));
        assertThrust(driven + onFirst, Side.REAR, thrust(FIRST, 100, "countershaft"));
        assertThrust(onFirst, Side.FRONT, thrust(FIRST, 100, "output"));
        assertThrust(onSecond - driven, Side.FRONT, thrust(SECOND, 100, "countershaft"));
    }

    @ParameterizedTest
    @CsvSource({"1, CLOCKWISE, rear", "-1, CLOCKWISE, front", "1, ANTICLOCKWISE, front", "-1, ANTICLOCKWISE, rear"})
    void theOverrunAndTheOtherSenseEachTurnTheThrustRound(int sign, Turn turns, String end) {
        BoxForces forces = BoxForces.of(
                        PRATINCOLE, train(PRATINCOLE, FIRST), new InputTorque(Fraction.of(100L * sign), turns))
                .orElseThrow();
        assertEquals(
                Telling.told(new ThrustSeat.OneBearing("countershaft %s bearing".formatted(end))),
                forces.thrusts().get("countershaft").takenBy());
    }

    @Test
    void aBearingOfWhichNothingIsToldLeavesItOpen() {
        assertEquals(
                Optional.of("cannot be told, which way output bearing takes thrust is missing"),
                forces(PRATINCOLE, FIRST, 100).thrusts().get("output").takenBy().whyNot());
    }

    /** In reverse only the helical input pair thrusts; the straight-cut ones and the spindle in the case do not. */
    @Test
    void straightCutGearsAskNothing() {
        BoxForces forces = forces(PRATINCOLE, REVERSE, 100);
        assertThrust(PER_TOOTH / 25, Side.REAR, forces.thrusts().get("countershaft"));
        for (String shaft : List.of("output", "idler-spindle")) {
            assertEquals(
                    Telling.told(new ThrustSeat.NothingToTake()),
                    forces.thrusts().get(shaft).takenBy());
        }
    }

    /** Each of three planets takes a third of the force; sun and ring thrust apart alike, the planets not at all. */
    @Test
    void planetsShareAndDoNotThrust() {
        Layout phalarope = Boxes.typed("teeth", "phalarope");
        BoxForces forces = forces(phalarope, Stance.NEUTRAL.with("hold-sleeve", Side.REAR), 100);
        double onSun = 2 * 100_000 * Math.sin(Math.toRadians(20)) / (2 * 30);
        MeshForces sunMesh = forces.meshes().get(0);
        assertEquals(3, sunMesh.alike());
        assertEquals(
                100_000 * Math.cos(Math.toRadians(20)) / 30 / 3,
                sunMesh.on("sun").value().orElseThrow().tangentialN(),
                1e-9);
        assertThrust(onSun, Side.REAR, forces.thrusts().get("input"));
        assertThrust(onSun, Side.FRONT, forces.thrusts().get("ring-carrier"));
        assertEquals(
                Telling.told(new Thrust(0, Optional.empty())),
                forces.thrusts().get("planet-spindle").thrust());
        assertEquals(
                Telling.told(new ThrustSeat.OneBearing("input bearing")),
                forces.thrusts().get("input").takenBy());
        assertEquals(
                Optional.of("cannot be told, any bearing of ring carrier shaft is missing"),
                forces.thrusts().get("ring-carrier").takenBy().whyNot());
    }

    /** What is not told of a box, hands or the cones of bevels, is named; the rest is told, in every stance. */
    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet", "heron", "snipe", "godwit"})
    void whatIsNotToldIsNotGuessed(String id) {
        Layout layout = Boxes.the(id);
        for (Stance stance : Stances.all(layout)) {
            BoxForces.of(layout, train(layout, stance), input(100)).stream()
                    .flatMap(forces -> forces.meshes().stream())
                    .filter(mesh -> mesh.forces().value().isEmpty())
                    .flatMap(mesh -> mesh.forces().because().stream())
                    .forEach(why -> assertTrue(NOT_TOLD.matcher(why).matches(), why));
        }
    }

    @Test
    void everyForceInTheGearsOfTheDeliveryTruckIsTold() {
        Layout curlew = Boxes.the("curlew");
        for (Stance stance : Stances.all(curlew)) {
            BoxForces.of(curlew, train(curlew, stance), input(100))
                    .ifPresent(forces -> forces.meshes()
                            .forEach(mesh ->
                                    assertEquals(List.of(), mesh.forces().because())));
        }
    }

    private static ShaftThrust thrust(Stance stance, int torqueNm, String shaft) {
        return forces(PRATINCOLE, stance, torqueNm).thrusts().get(shaft);
    }

    private static void assertThrust(double newtons, Side toward, ShaftThrust actual) {
        Thrust thrust = actual.thrust().value().orElseThrow(() -> new AssertionError(actual.thrust()));
        assertEquals(Optional.of(toward), thrust.toward());
        assertEquals(newtons, thrust.newtons(), 1e-9 * newtons);
    }

    private static BoxForces forces(Layout layout, Stance stance, int torqueNm) {
        return BoxForces.of(layout, train(layout, stance), input(torqueNm)).orElseThrow();
    }

    private static InputTorque input(int torqueNm) {
        return new InputTorque(Fraction.of(torqueNm), Turn.CLOCKWISE);
    }

    private static Train train(Layout layout, Stance stance) {
        return new TrainBuilder(layout, Changes.NONE).at(stance);
    }
}
