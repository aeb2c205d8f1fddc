package org.layshaft.kb.typed;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Road.EnginePoint;
import org.layshaft.kb.layout.Road.SpeedRead;

/** Reads what is stated of the vehicle. */
final class RoadReading {
    private RoadReading() {}

    static Optional<TypedRoad> of(Item road) {
        return road.isObject() ? Optional.of(new TypedRoad(road.pointer(), facts(road))) : Optional.empty();
    }

    private static Road facts(Item road) {
        return new Road(
                road.get("tyre").text(),
                road.get("rolling_circumference_mm").whole(),
                road.get("dynamic_factor").decimal(),
                road.get("axle_ratio").decimal(),
                road.get("efficiency").decimal(),
                road.get("mass_kg").decimal(),
                road.get("rolling_coefficient").decimal(),
                road.get("drag_area_m2").decimal(),
                road.get("air_density_kg_m3").decimal(),
                points(road.get("engine")),
                road.get("speed_read").text().flatMap(RoadReading::place));
    }

    private static List<EnginePoint> points(Item engine) {
        return engine.items().stream()
                .flatMap(point -> point
                        .get("rpm")
                        .decimal()
                        .flatMap(rpm -> point.get("torque_nm").decimal().map(nm -> new EnginePoint(rpm, nm)))
                        .stream())
                .toList();
    }

    private static Optional<SpeedRead> place(String word) {
        return switch (word) {
            case "gearbox-output" -> Optional.of(SpeedRead.GEARBOX_OUTPUT);
            case "differential" -> Optional.of(SpeedRead.DIFFERENTIAL);
            case "wheels" -> Optional.of(SpeedRead.WHEELS);
            default -> Optional.empty();
        };
    }
}
