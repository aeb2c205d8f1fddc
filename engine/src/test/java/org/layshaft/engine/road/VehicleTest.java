package org.layshaft.engine.road;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;

/** Boxes of Saltmarsh on the road. */
class VehicleTest {
    private static final Road ROAD = Road.NOTHING.withRollingCircumference(2000);

    /** Fourth of the curlew is 1363/1008; on 4 behind it and 2 m a turn, 1000 rpm are 120/(4 × 1363/1008) km/h. */
    @Test
    void derivedRatiosOnTheAxleThatIsStated() {
        RoadTable table = table("curlew", ROAD.withAxleRatio(BigDecimal.valueOf(4)), Optional.of(Fraction.of(60)));
        RoadTable.Row fourth = table.rows().get(3);
        assertEquals("4", fourth.gear());
        assertEquals(Fraction.of(1363, 1008), fourth.ratio());
        assertEquals(Telling.told(Fraction.of(1363, 252)), fourth.overall());
        assertEquals(Telling.told(Fraction.of(120 * 252, 1363)), fourth.kmhPer1000Rpm());
        assertEquals(Optional.of(Telling.told(Fraction.of(1000 * 1363, 2 * 252))), fourth.rpm());
        assertEquals(Optional.of(Telling.told(Fraction.of(2000))), fourth.rpmAfterShiftUp());
        assertEquals(List.of("1", "2", "3", "4", "5", "R"), gears(table));
        assertEquals(Optional.empty(), table.rows().get(5).step());
        assertEquals(Optional.empty(), table.rows().get(4).rpmAfterShiftUp());
    }

    /** A box with its output shaft and no axle told of; a transaxle, whose half-shafts reach the wheels. */
    @Test
    void theAxleIsAskedForWhereTheBoxHasNone() {
        assertEquals(
                Telling.missing("the axle ratio"),
                table("curlew", ROAD, Optional.empty()).rows().get(0).overall());
        RoadTable plover = table("plover", ROAD, Optional.empty());
        assertEquals(
                Telling.told(plover.rows().get(0).ratio()), plover.rows().get(0).overall());
        assertEquals(Optional.empty(), plover.rows().get(0).rpm());
    }

    @Test
    void whatIsNotStatedIsNamed() {
        RoadTable bare = table("curlew", Road.NOTHING, Optional.empty());
        assertEquals(
                List.of("the axle ratio is missing", "the tyre or its rolling circumference is missing"),
                bare.rows().get(0).kmhPer1000Rpm().because());
        assertEquals(
                List.of(
                        "the engine's torque curve is missing",
                        "the axle ratio is missing",
                        "the tyre or its rolling circumference is missing",
                        "the efficiency from engine to wheels is missing",
                        "the mass is missing",
                        "the rolling coefficient is missing",
                        "the drag area is missing",
                        "the air density is missing"),
                bare.topSpeed().because());
    }

    @Test
    void tyresByTheirCodes() {
        Road radial = Road.NOTHING.withTyre("205/55 R16");
        assertEquals(
                Optional.of(1927),
                Vehicle.of(box("plover"), radial).tyre().value().map(RollingCircumference::mm));
        Road nonsense = Road.NOTHING.withTyre("205/555 R16");
        Box plover = box("plover");
        assertThrows(ImpossibleFactsException.class, () -> Vehicle.of(plover, nonsense));
    }

    /** Another tyre and another axle: 2000 for 1900 mm reads 5 per cent low, 4.2 for 4 at the gearbox 5 high. */
    @Test
    void theSpeedometerAfterAnExchange() {
        Road before = Road.NOTHING.withRollingCircumference(1900);
        assertEquals(Telling.told(Fraction.of(-5)), error(before, before.withRollingCircumference(2000)));
        Road axle = before.withAxleRatio(BigDecimal.valueOf(4));
        assertEquals(
                Telling.missing("where the speed is read"), error(axle, axle.withAxleRatio(new BigDecimal("4.2"))));
        assertEquals(
                Telling.missing("the axle ratio before"), error(before, before.withAxleRatio(BigDecimal.valueOf(4))));
        assertEquals(Telling.missing("the tyre or its rolling circumference"), error(Road.NOTHING, before));
    }

    private static Telling<Fraction> error(Road before, Road after) {
        return SpeedometerChange.between(Vehicle.of(box("curlew"), before), Vehicle.of(box("curlew"), after))
                .then(SpeedometerChange::errorPercent);
    }

    private static List<String> gears(RoadTable table) {
        return table.rows().stream().map(RoadTable.Row::gear).toList();
    }

    private static RoadTable table(String box, Road road, Optional<Fraction> kmh) {
        return RoadTable.of(Vehicle.of(box(box), road), kmh);
    }

    private static Box box(String id) {
        return Reasoners.standard(PackReader.read(PackSource.onClassPath()).knowledge())
                .box(Boxes.the(id));
    }
}
