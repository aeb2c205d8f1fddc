package org.layshaft.engine.swap;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;

/**
 * A box in its vehicle and what it comes to.
 *
 * @param road at the cruising speed
 * @param conflicts every two gears on different rails
 */
public record Installed(Layout layout, Box box, Vehicle vehicle, RoadTable road, List<Conflict> conflicts) {
    public Installed {
        conflicts = List.copyOf(conflicts);
    }

    /** Throws {@link org.layshaft.engine.stated.ImpossibleFactsException} where a fact about the vehicle makes no sense. */
    static Installed of(Layout layout, Reasoner reasoner, Running running) {
        Box box = reasoner.box(layout);
        Vehicle vehicle = Vehicle.of(box, layout.road().orElse(Road.NOTHING));
        return new Installed(
                layout,
                box,
                vehicle,
                RoadTable.of(vehicle, running.cruiseKmh()),
                reasoner.whatIf(layout, List.of()).conflicts());
    }

    /** By what the levers push for them, which has a gear of its own. */
    Map<List<Box.Push>, Box.DerivedGear> gearsByPushes() {
        return box.gears().stream().collect(Collectors.toMap(Box.DerivedGear::pushes, Function.identity()));
    }

    RoadTable.Row row(String gear) {
        return road.rows().stream()
                .filter(row -> row.gear().equals(gear))
                .findFirst()
                .orElseThrow();
    }
}
