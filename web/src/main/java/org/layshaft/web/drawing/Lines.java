package org.layshaft.web.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/**
 * The lines of the drawing: shafts that turn about one axis share a line. A differential has a line of its own, with its
 * ring gear and half-shafts. A line is called after its first shaft, or its differential.
 */
final class Lines {
    private final Layout layout;
    private final Map<String, String> lineOfCarrier = new LinkedHashMap<>();

    Lines(Layout layout) {
        this.layout = layout;
        layout.all(Shaft.class).forEach(shaft -> lineOfCarrier.put(shaft.id(), shaft.id()));
        layout.all(Differential.class).forEach(differential -> lineOfCarrier.put(differential.id(), differential.id()));
        between(layout).forEach(bearing -> {
            String kept = lineOfCarrier.get(bearing.outer());
            String joined = lineOfCarrier.get(bearing.inner());
            lineOfCarrier.replaceAll((carrier, line) -> line.equals(joined) ? kept : line);
        });
    }

    /** The bearings in which one shaft runs in another. */
    static List<Bearing> between(Layout layout) {
        return layout.all(Bearing.class)
                .filter(bearing -> layout.find(Shaft.class, bearing.inner()).isPresent())
                .filter(bearing -> layout.find(Shaft.class, bearing.outer()).isPresent())
                .toList();
    }

    List<String> all() {
        return lineOfCarrier.values().stream().distinct().toList();
    }

    /** The line of a shaft or differential. */
    String ofCarrier(String carrier) {
        return lineOfCarrier.get(carrier);
    }

    /** The line of a gear. */
    String of(Gear gear) {
        return ofCarrier(
                gear.seat() == Seat.RIM
                        ? layout.the(Sleeve.class, gear.carrier()).shaft()
                        : gear.carrier());
    }

    List<Shaft> shafts(String line) {
        return layout.all(Shaft.class)
                .filter(shaft -> ofCarrier(shaft.id()).equals(line))
                .toList();
    }

    Optional<Differential> differential(String line) {
        return layout.find(Differential.class, line);
    }

    List<Gear> gears(String line) {
        return layout.all(Gear.class).filter(gear -> of(gear).equals(line)).toList();
    }

    /** Whether nothing on it but free gears turns. */
    boolean held(String line) {
        List<Shaft> shafts = shafts(line);
        return !shafts.isEmpty() && shafts.stream().allMatch(Shaft::held);
    }
}
