package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Side;

/** Cars joined from units, asked from the clutch to the wheels. */
class WholeCarTest {
    @ParameterizedTest
    @CsvSource({
        "box-1-2-sleeve, REAR, 47/24 52/19 43/11",
        "box-1-2-sleeve, FRONT, 47/24 43/28 43/11",
        "box-3-4-sleeve, REAR, 47/24 34/37 43/11",
        "box-3-4-sleeve, FRONT, 47/24 29/42 43/11",
        "box-5-R-sleeve, FRONT, 43/11",
        "box-5-R-sleeve, REAR, -47/24 44/17 43/11"
    })
    void egretDrivesItsRearWheels(String sleeve, Side side, String pairs) {
        assertEquals(Pairs.ratio(pairs), Placed.of("egret").with(sleeve, side).ratio());
    }

    /** Axles of one ratio: dogs may tie them, straight ahead nothing winds up. */
    @ParameterizedTest
    @CsvSource({
        "high, two-wheel, 32/18 34/16 35/29 43/11",
        "high, four-wheel, 32/18 34/16 35/29 43/11",
        "low, four-wheel, 32/18 34/16 33/29 47/21 43/11"
    })
    void ibisInFirst(String range, String axle, String pairs) {
        Placed first = inFirst("ibis", "box-1-2-sleeve", Side.REAR, range).with("transfer-front-axle", axle);
        assertEquals(Pairs.ratio(pairs), first.ratio());
    }

    /** The centre differential halves what the box gives, each axle halves it again. */
    @Test
    void eachWheelOfCraneBearsAQuarter() {
        Placed first = inFirst("crane", "box-1-2-sleeve", Side.REAR, "low").with("transfer-centre-lock", "open");
        Fraction whole = Pairs.ratio("42/24 45/21 136/50 43/11");
        assertEquals(whole, first.ratio());
        assertFalse(first.torques().shareIsAssumed());
        List<Connection.Rolling> wheels = wheels(first.train());
        assertEquals(4, wheels.size());
        for (Connection.Rolling wheel : wheels) {
            assertEquals(
                    whole.over(Fraction.of(4)),
                    first.torque(wheel.id(), wheel.output()).absolute(),
                    wheel::output);
        }
    }

    /**
     * With a front axle of 41/11 beside the rear one of 43/11, four wheels that all roll alike leave exact speeds no
     * motion but standing: on the road something winds up until a wheel slips. A centre differential, or letting the
     * front axle go, leaves them free.
     */
    @ParameterizedTest
    @ValueSource(strings = {"ibis", "crane"})
    void axlesThatDifferLockWhatTiesThem(String car) {
        boolean dogs = car.equals("ibis");
        Placed high = inFirst(car, "box-1-2-sleeve", Side.REAR, "high");
        Placed tied =
                dogs ? high.with("transfer-front-axle", "four-wheel") : high.with("transfer-centre-lock", "locked");
        Placed untied =
                dogs ? high.with("transfer-front-axle", "two-wheel") : high.with("transfer-centre-lock", "open");
        assertEquals(Outcome.DRIVES, tied.outcome());
        assertEquals(
                Outcome.LOCKED,
                TrainSolver.solve(withFrontAxleOf41(tied.train())).outcome());
        assertEquals(
                Outcome.DRIVES,
                TrainSolver.solve(withFrontAxleOf41(untied.train())).outcome());
    }

    private static Placed inFirst(String car, String sleeve, Side side, String range) {
        return Placed.of(car).with(sleeve, side).with("transfer-range", range);
    }

    private static List<Connection.Rolling> wheels(Train train) {
        return train.connections().stream()
                .filter(Connection.Rolling.class::isInstance)
                .map(Connection.Rolling.class::cast)
                .toList();
    }

    private static Train withFrontAxleOf41(Train train) {
        List<Connection> connections = new ArrayList<>(train.connections());
        connections.replaceAll(connection -> connection instanceof Connection.Meshing meshing
                        && meshing.mesh().joins("front-axle-ring-gear")
                ? new Connection.Meshing(
                        new Mesh("front-axle-drive-pinion", "front-axle-ring-gear", MeshKind.BEVEL), 11, 41)
                : connection);
        return Train.of(train.bodies(), connections, train.input(), train.output());
    }
}
