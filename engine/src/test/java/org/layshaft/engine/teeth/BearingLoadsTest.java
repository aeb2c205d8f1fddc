package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.layshaft.engine.teeth.SomeTeeth.forces;
import static org.layshaft.engine.teeth.SomeTeeth.helical;
import static org.layshaft.engine.teeth.SomeTeeth.spur;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.teeth.BearingLoads.BearingLoad;
import org.layshaft.engine.teeth.BearingLoads.Place;
import org.layshaft.kb.layout.Hand;

class BearingLoadsTest {
    private static final Place FRONT = at("front", 0);

    /** A spur gear driven clockwise, its mate above it: pressed down by 364 and to the right by 1000, 1 to 3 shared. */
    @Test
    void oneSpurGearBetweenItsBearings() {
        ToothForce force = forces(new LoadedPair(spur("a", 25, 4), spur("b", 50, 4), 50, Turn.ANTICLOCKWISE))
                .onDriven();
        BearingLoads loads = loads(List.of(new PlacedForce(force, 75, 0)), FRONT, at("rear", 100));
        double radial = 1000 * Math.tan(Math.toRadians(20));
        assertLoad(new BearingLoad("front", radial / 4, -250), loads.first());
        assertLoad(new BearingLoad("rear", radial * 3 / 4, -750), loads.second());
        assertEquals(750 / Math.cos(Math.toRadians(20)), loads.second().radialN(), 1e-9);
    }

    /** An overhung gear lifts the far bearing. */
    @Test
    void anOverhungGearReversesTheFarBearing() {
        ToothForce force = forces(new LoadedPair(spur("a", 25, 4), spur("b", 50, 4), 50, Turn.ANTICLOCKWISE))
                .onDriven();
        BearingLoads loads = loads(List.of(new PlacedForce(force, 150, 0)), FRONT, at("rear", 100));
        assertEquals(500, loads.first().rightN(), 1e-9);
        assertEquals(-1500, loads.second().rightN(), 1e-9);
    }

    /** The second road: all six equations of balance in space, about a point off the shaft, solved by EJML. */
    @RepeatedTest(100)
    void balanceInSpace(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        List<PlacedForce> forces = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            forces.add(someForce(random));
        }
        double rear = 200 + 50 * random.nextDouble();
        BearingLoads loads = loads(forces, FRONT, at("rear", rear));
        SimpleMatrix unknown = inSpace(forces, 0, rear);
        double scale = unknown.normF() + 1;
        assertEquals(unknown.get(0), loads.first().upN(), 1e-9 * scale);
        assertEquals(unknown.get(1), loads.first().rightN(), 1e-9 * scale);
        assertEquals(unknown.get(2), loads.second().upN(), 1e-9 * scale);
        assertEquals(unknown.get(3), loads.second().rightN(), 1e-9 * scale);
    }

    @Test
    void aBearingWithoutPlaceLeavesItOpen() {
        assertEquals(
                Optional.of("cannot be told, the place of rear along its shaft is missing"),
                BearingLoads.of(List.of(), FRONT, new Place("rear", OptionalDouble.empty()))
                        .whyNot());
    }

    @Test
    void twoBearingsInOnePlaceAreRefused() {
        Place also = at("rear", 0);
        List<PlacedForce> none = List.of();
        assertEquals(
                "front and rear both stand at 0.0 mm. Two bearings hold a shaft from different places.",
                assertThrows(ImpossibleFactsException.class, () -> BearingLoads.of(none, FRONT, also))
                        .getMessage());
    }

    /** Unknown: up and right at the front, up and right at the rear, thrust and torque that hold the shaft. */
    private static SimpleMatrix inSpace(List<PlacedForce> forces, double front, double rear) {
        SimpleMatrix balance = new SimpleMatrix(6, 6);
        SimpleMatrix given = new SimpleMatrix(6, 1);
        double[][] units = {{0, 1, 0}, {0, 0, 1}};
        for (int i = 0; i < 2; i++) {
            put(balance, i, vector(front, 0, 0), vector(units[i]));
            put(balance, 2 + i, vector(rear, 0, 0), vector(units[i]));
        }
        put(balance, 4, vector(0, 0, 0), vector(1, 0, 0));
        balance.set(3, 5, 1);
        for (PlacedForce placed : forces) {
            double round = Math.toRadians(placed.meshAtDeg());
            SimpleMatrix outward = vector(0, Math.cos(round), Math.sin(round));
            SimpleMatrix clockwise = cross(vector(1, 0, 0), outward);
            ToothForce force = placed.force();
            SimpleMatrix sum = outward.scale(-force.inwardN())
                    .plus(clockwise.scale(force.clockwiseN()))
                    .plus(vector(force.rearwardN(), 0, 0));
            SimpleMatrix column = new SimpleMatrix(6, 1);
            put(column, 0, vector(placed.atMm(), 0, 0).plus(outward.scale(force.atRadiusMm())), sum);
            given = given.minus(column);
        }
        return balance.solve(given);
    }

    /** Force and moment about a point in front of the shaft and beside it. */
    private static void put(SimpleMatrix into, int column, SimpleMatrix at, SimpleMatrix force) {
        SimpleMatrix moment = cross(at.minus(vector(-30, 12, 7)), force);
        for (int i = 0; i < 3; i++) {
            into.set(i, column, force.get(i));
            into.set(3 + i, column, moment.get(i));
        }
    }

    private static PlacedForce someForce(Random random) {
        Hand hand = random.nextBoolean() ? Hand.RIGHT : Hand.LEFT;
        PairForces forces = forces(new LoadedPair(
                helical("a", 15 + random.nextInt(30), hand),
                helical("b", 15 + random.nextInt(30), hand.opposite()),
                300 * random.nextDouble(),
                random.nextBoolean() ? Turn.CLOCKWISE : Turn.ANTICLOCKWISE));
        return new PlacedForce(
                random.nextBoolean() ? forces.onDriver() : forces.onDriven(),
                250 * random.nextDouble(),
                360 * random.nextDouble());
    }

    private static BearingLoads loads(List<PlacedForce> forces, Place first, Place second) {
        return BearingLoads.of(forces, first, second).value().orElseThrow();
    }

    private static Place at(String bearing, double mm) {
        return new Place(bearing, OptionalDouble.of(mm));
    }

    private static void assertLoad(BearingLoad expected, BearingLoad actual) {
        assertEquals(expected.bearing(), actual.bearing());
        assertEquals(expected.upN(), actual.upN(), 1e-9);
        assertEquals(expected.rightN(), actual.rightN(), 1e-9);
    }

    private static SimpleMatrix cross(SimpleMatrix left, SimpleMatrix right) {
        return vector(
                left.get(1) * right.get(2) - left.get(2) * right.get(1),
                left.get(2) * right.get(0) - left.get(0) * right.get(2),
                left.get(0) * right.get(1) - left.get(1) * right.get(0));
    }

    private static SimpleMatrix vector(double... parts) {
        return new SimpleMatrix(parts);
    }
}
