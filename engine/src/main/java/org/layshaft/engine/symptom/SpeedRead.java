package org.layshaft.engine.symptom;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Shaft;

/** What the speed of the vehicle is read from. */
public final class SpeedRead {
    private SpeedRead() {}

    /** Ids of the bodies, any one of which it is read from; empty where the layout does not say. */
    public static List<String> from(Layout layout) {
        return layout.road()
                .flatMap(Road::speedRead)
                .map(place -> switch (place) {
                    case WHEELS ->
                        layout.all(HalfShaft.class).map(HalfShaft::wheel).toList();
                    case DIFFERENTIAL ->
                        layout.finalDrives().stream().map(Differential::id).toList();
                    case GEARBOX_OUTPUT -> outputOfTheBox(layout);
                })
                .orElse(List.of());
    }

    private static List<String> outputOfTheBox(Layout layout) {
        List<String> shafts = layout.outputs().stream()
                .filter(output -> layout.find(Shaft.class, output).isPresent())
                .toList();
        return shafts.isEmpty() ? pinions(layout).toList() : shafts;
    }

    /** The shafts of the pinions that drive the ring gears. */
    private static Stream<String> pinions(Layout layout) {
        return layout.finalDrives().stream()
                .flatMap(differential -> differential.ringGear().stream())
                .flatMap(ring ->
                        layout.everyMesh().filter(mesh -> mesh.joins(ring)).map(mesh -> mesh.other(ring)))
                .map(layout::gear)
                .map(Gear::carrier)
                .distinct();
    }
}
